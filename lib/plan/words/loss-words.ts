import type { Loss } from "#lib/domain/records/loss";
import { countOf, inWholes } from "./numbers";

/** What was left of plants, of one record: "voles left 10 of 40 plants"; of a winter "32 of 40 plants came through the winter in the ground". */
export function lossInWords({
  cause,
  plantsBefore,
  plantsLeft,
}: Pick<Loss, "cause" | "plantsBefore" | "plantsLeft">): string {
  const share = `${inWholes(plantsLeft)} of ${countOf(plantsBefore, "plant")}`;
  return cause === "winter in the ground" || cause === "winter in store"
    ? `${share} came through the ${cause}`
    : `${cause} left ${share}`;
}
