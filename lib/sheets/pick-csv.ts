import { toDay } from "#lib/domain/day";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { csvText } from "./csv-text";

const COLUMNS = [
  "cut_on",
  "from",
  "crop",
  "variety",
  "colour",
  "cut_stage",
  "stems",
  "stems_to_cut",
  "bunches",
  "buckets",
  "held_days",
  "at_a_stretch",
  "client",
  "event_on",
  "roles",
  "cautions",
];

/** The pick list as CSV after RFC 4180: a header, a row a line, CRLF. Stems are saleable; stems_to_cut adds what is graded out. */
export function pickCsv(lines: readonly PickLine[]): string {
  const rows = lines.map((line) => [
    toDay(line.cutDay),
    placeOf(line.stand),
    line.crop.name,
    line.variety.name,
    line.variety.colour,
    line.crop.cutStage,
    line.stems,
    line.stemsToCut,
    line.bunchCount,
    line.bucketCount,
    line.heldDays,
    line.isStretched ? "yes" : "no",
    line.booking.client,
    line.booking.eventOn,
    line.roles.join(" / "),
    line.crop.cautions.join(" / "),
  ]);
  return csvText([COLUMNS, ...rows]);
}
