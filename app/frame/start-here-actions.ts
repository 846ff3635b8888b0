"use server";

import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { farmFile } from "../load";
import type { FormState } from "../ui/form-state";
import { FormValues } from "../ui/form-values";

/** These stand outside `action`: they must answer while there is no farm. A farm that is there is left alone. */

/** Starts the invented farm at the place where a farm was looked for. */
export const startDemoHere = async (_: FormState, form: FormData): Promise<FormState> =>
  startedHere(new FormValues(form), []);

/** Starts the grower's own farm there: crops, curves and recipes to overrule, and empty ground. */
export async function startOwnHere(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const named = values.parse(nameSchema, { name: values.text("name") });
  return named.ok ? startedHere(values, [named.parsed.name]) : values.refused(named.problems);
}

const nameSchema = z.object({ name: z.string().trim().min(1, "write the farm’s name").max(100) });

async function startedHere(values: FormValues, ownName: readonly string[]): Promise<FormState> {
  const { file } = farmFile();
  const said = existsSync(file)
    ? "there is a file at this place now: load the page again"
    : await loadDemo(file, ownName);
  if (said !== null) return values.refused([{ place: "", message: said }]);
  revalidatePath("/", "layout");
  redirect("/");
}

/** The screens know no demo, so the script of the first start is run; gives what it complains of, or null when the farm is there. */
function loadDemo(file: string, ownName: readonly string[]): Promise<string | null> {
  return new Promise((resolve) => {
    const script = spawn(process.execPath, ["--import", "tsx", "demo/load-demo.ts", file, ...ownName], {
      stdio: ["ignore", "ignore", "pipe"],
    });
    let complaint = "";
    script.stderr.on("data", (text) => {
      complaint += text;
    });
    script.once("error", ({ message }) => resolve(message));
    script.once("close", (code) =>
      resolve(code === 0 && existsSync(file) ? null : complaint.trim() || "the farm could not be started here"),
    );
  });
}
