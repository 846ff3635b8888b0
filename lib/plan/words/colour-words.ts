import { anyOf } from "#lib/domain/listed";
import type { Need } from "#lib/plan/road/needs";

/** The colours that a need takes: "blush, cream or white", "any colour", "any colour but white". What its booking will not have is never among them. */
export function coloursInWords({ colours, booking }: Pick<Need, "colours" | "booking">): string {
  const refused = booking.unacceptableColours;
  const taken = anyOf(colours.filter((colour) => !refused.includes(colour)));
  return taken || (refused.length ? `any colour but ${anyOf(refused)}` : "any colour");
}
