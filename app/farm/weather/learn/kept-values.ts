import type { Parsed, Problem } from "#lib/domain/problem";
import { FIRST_CUT, type FirstCut, type FirstCutDraft, firstCutDraftSchema } from "#lib/domain/records/first-cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { readFirstCuts } from "#lib/sheets/first-cuts-sheet";
import type { FormValues } from "../../../ui/form-values";
import { MOST_LETTERS, TOO_LONG } from "./lesson";

/** First cuts of a curve as they were typed, to be kept. Every line that is wrong is told, and then none is kept. */
export function typedFirstCuts({ curves }: Snapshot, curveId: number, dates: string): Parsed<FirstCutDraft[]> {
  const no = (...problems: Problem[]) => ({ ok: false, problems }) as const;
  const curve = curves.find(({ id }) => id === curveId);
  if (!curve) return no({ place: "curve", message: "choose one of the curves in the list" });
  if (dates.trim() === "") return no({ place: "dates", message: NONE });
  if (dates.length > MOST_LETTERS) return no({ place: "dates", message: TOO_LONG });
  const { rows, problems } = readFirstCuts(dates);
  const wrong = problems.map(({ line, message }) => ({ place: `dates[${line}]`, message: `line ${line}: ${message}` }));
  const isPlanted = curve.anchor.kind === "days-after-planting";
  rows.forEach(({ year, plantedOn, firstCut }, index) => {
    const say = (message: string) => wrong.push({ place: `dates ${firstCut} ${index}`, message });
    const isAgain = rows
      .slice(0, index)
      .some((row) => row.year === year && (!isPlanted || row.plantedOn === plantedOn));
    if (isPlanted && plantedOn === undefined)
      say(`${firstCut}: write the planting day before it, such as ${year}-05-20 ${firstCut}`);
    else if (isAgain) say(`${isPlanted ? plantedOn : year} stands a second time: keep one of the two lines`);
  });
  if (wrong.length > 0) return no(...wrong);
  if (rows.length === 0) return no({ place: "dates", message: NONE });
  const { cropId, varietyId, treatment } = curve;
  return {
    ok: true,
    parsed: rows.map(({ year, plantedOn, firstCut }) => ({
      ...{ cropId, varietyId, treatment, seasonYear: year, firstCut },
      plantedOn: isPlanted ? (plantedOn ?? null) : null,
    })),
  };
}

const NONE = "there is no first cut to keep: write one a line";

/** A kept first cut as its form says: other days or another season of the same crop. */
export function changedFirstCut(
  values: FormValues,
  { farm, firstCuts }: Snapshot,
): Parsed<{ readonly id: number; readonly draft: FirstCutDraft }> {
  const { seasonYear, plantedOn, firstCut } = FIRST_CUT;
  const before = firstCuts.find(({ id }) => id === values.hiddenNumber("firstCutId"));
  const read = values.record({ seasonYear, plantedOn, firstCut }, farm, { before });
  if (!before)
    return { ok: false, problems: [{ place: "", message: "this first cut is gone: look at the page again" }] };
  if (!read.ok) return read;
  const { id, ...kept } = before satisfies FirstCut;
  const draft = values.parse(firstCutDraftSchema, { ...kept, ...read.parsed });
  return draft.ok ? { ok: true, parsed: { id, draft: draft.parsed } } : draft;
}
