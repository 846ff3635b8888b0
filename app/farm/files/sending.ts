import { z } from "zod";
import { type Parsed, problemsOf } from "#lib/domain/problem";
import type { SheetFile } from "#lib/sheets/open-files";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { unzipSheets } from "#lib/sheets/unzip-sheets";
import { sentForm } from "../../door/sent-form";

const sendingSchema = z.object({
  step: z.enum(["check", "all", "clean"]),
  sending: z.coerce.number().int(),
  files: z.instanceof(Blob, { error: "choose at least one file" }),
});

export type Sending = {
  readonly step: "check" | "all" | "clean";
  readonly sending: number;
  readonly files: readonly SheetFile[];
  /** What kept other files from being read. */
  readonly problems: readonly SheetProblem[];
};

/** What the form of files sent: one zip with the sheets in it, each in a folder that numbers it, decoded. */
export async function readSending(form: unknown): Promise<Parsed<Sending>> {
  const parsed = sendingSchema.safeParse(Object.fromEntries(sentForm(form)));
  if (!parsed.success) return { ok: false, problems: problemsOf(parsed.error) };
  const { files, problems } = unzipSheets(new Uint8Array(await parsed.data.files.arrayBuffer()));
  if (files.length === 0 && problems.length > 0)
    return { ok: false, problems: problems.map(({ file, message }) => ({ place: baseName(file), message })) };
  return {
    ok: true,
    parsed: {
      ...parsed.data,
      files: files.map((file) => ({ ...file, name: baseName(file.name) })),
      problems: problems.map((problem) => ({ ...problem, file: baseName(problem.file) })),
    },
  };
}

const baseName = (path: string): string => path.split("/").at(-1) ?? path;
