import { readFileSync } from "node:fs";
import { z } from "zod";
import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { mangled, oddText } from "./odd-inputs";

/** An action: on which page it can be called, by what name in the code, and by what name on the wire. */
type ServedAction = { readonly path: string; readonly name: string; readonly id: string };

/** What a call carries: the fields of a form after the state before it, or a list of plain values. */
type Sample = { readonly fields: Readonly<Record<string, string>> } | { readonly values: readonly unknown[] };

const YEARS = JSON.stringify([
  { id: 2026, highTenthsC: Array.from({ length: 365 }, () => 210), lowTenthsC: Array.from({ length: 365 }, () => 90) },
]);

/** Actions that no form sends by itself, each with a call that it takes as it stands. */
export const SCRIPT_CALLS: Readonly<Record<string, Sample>> = {
  readPasted: { values: ["focal\t40\tblush, cream\nBridal bouquet\t1"] },
  compareWeather: { fields: { years: YEARS } },
  saveWeather: { fields: { years: YEARS, changes: "yes", $saveKey: "a" } },
  learnFirstCuts: { fields: { curve: "1", dates: "2024 2024-06-01\n2025 2025-06-11\n2026 2026-06-05" } },
  adoptLesson: { fields: { curve: "1", dates: "2024 2024-06-01\n2025 2025-06-11\n2026 2026-06-05", choice: "mean" } },
  rememberColour: { fields: { name: "dusty rose", colour: "blush" } },
  adoptBeds: { fields: { seasonYear: "2027", keptBedIds: "1,2" } },
  saveAsWhatIf: { fields: { seasonYear: "2027", keptBedIds: "1,2", name: "two kept" } },
};

const manifestSchema = z.object({
  node: z.record(z.string(), z.object({ exportedName: z.string(), workers: z.record(z.string(), z.unknown()) })),
});

/** Every action of the built app, as the framework lists them. */
export function builtActions(): ServedAction[] {
  const { node } = manifestSchema.parse(
    JSON.parse(readFileSync(".next/server/server-reference-manifest.json", "utf8")),
  );
  return Object.entries(node).map(([id, { exportedName, workers }]) => {
    const pages = Object.keys(workers).map((worker) => worker.replace(/^app(.*)\/page$/, "$1") || "/");
    return {
      id,
      name: exportedName,
      path: pages.find((page) => !/[[_]/.test(page)) ?? pages[0].replaceAll(/\[\w+\]/g, "1"),
    };
  });
}

/** The content type and the body of an odd call of an action: mostly what it takes, with some of it odd. */
export function oddCall(random: RandomSource, name: string, boundary: string): { kind: string; body: string } {
  const sample = SCRIPT_CALLS[name] ?? { fields: { id: "1" } };
  if ("values" in sample || random() < 0.2) {
    const values = "values" in sample ? sample.values : [null];
    const sent = values.map((value) => (random() < 0.6 ? oddValue(random, value) : value));
    const text = JSON.stringify(random() < 0.1 ? [] : sent);
    return { kind: "text/plain;charset=UTF-8", body: random() < 0.2 ? mangled(random, text) : text };
  }
  const parts = Object.entries(sample.fields).flatMap(([field, text]) => {
    const chance = random();
    if (chance < 0.1) return [];
    return [[`_1_${field}`, chance < 0.5 ? text : chance < 0.8 ? mangled(random, text) : oddText(random)]];
  });
  parts.push(["0", random() < 0.9 ? '[null,"$K1"]' : mangled(random, '[null,"$K1"]')]);
  const body = parts.map(
    ([field, text]) => `--${boundary}\r\nContent-Disposition: form-data; name="${field}"\r\n\r\n${text}\r\n`,
  );
  return { kind: `multipart/form-data; boundary=${boundary}`, body: `${body.join("")}--${boundary}--\r\n` };
}

const oddValue = (random: RandomSource, value: unknown): unknown =>
  oneOf<unknown>(random, [
    mangled(random, String(value)),
    oddText(random),
    wholeBetween(random, -2, 2),
    1e300,
    null,
    true,
    [],
    {},
    { text: [oddText(random)] },
  ]);
