import { inFull, toDay } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { placeOf } from "#lib/plan/road/pick-list";
import { pickRows } from "#lib/plan/road/pick-rows";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { countOf, inWholes } from "./numbers";

/** A row of a list that is handed on: what to cut, where. */
type RowToShare = {
  readonly place: string;
  readonly crop: Pick<Crop, "name" | "cautions">;
  readonly variety: Pick<Variety, "name" | "colour">;
  readonly stemsToCut: number;
};

/**
 * A day's list as a text to hand on, a line a row in walking order, with the cautions of what is cut. No client is named: whoever gets it may hand it on.
 * @param heading  the day, in words
 */
export function pickText(heading: string, rows: readonly RowToShare[]): string {
  const stems = rows.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0);
  const cautions = new Map(
    rows.flatMap(({ crop }) => (crop.cautions.length > 0 ? [[crop.name, crop.cautions] as const] : [])),
  );
  return [
    `${heading}: cut ${countOf(stems, "stem")}`,
    ...rows.map(
      ({ place, crop, variety, stemsToCut }) =>
        `${place}: ${inWholes(stemsToCut)} ${crop.name} ${variety.name}, ${variety.colour}`,
    ),
    ...[...cautions].map(([name, said]) => `Take care, ${name}: ${said.join(". ")}.`),
  ].join("\n");
}

/** The same of a day of the pick list; what stands in the cooler is to be taken out. */
export const pickTextOfDay = ({ cutDay, lines }: PickDay): string =>
  pickText(
    inFull(toDay(cutDay)),
    pickRows(lines).map((row) => ({ ...row, place: placeOf(row.stand) })),
  );
