import { z } from "zod";
import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { draftCoverage } from "../editor/draft-coverage";
import { halfPieces } from "../editor/odd-entries";
import { parseBookingForm } from "../editor/parse-form";
import { unknownChoices } from "../editor/unknown-choices";

const draftSchema = z.object({ bookingId: z.int().nullable(), form: z.unknown() });

/** The coverage of a booking as it is being typed: the lines, or all that stands in the way of them. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, draftSchema, "not a booking form");
  if (refusal) return refusal;
  const parsed = parseBookingForm(withoutName(asked.form), loadFarm().farm);
  if (!parsed.ok) return Response.json({ problems: parsed.problems });
  const unknown = [...unknownChoices(parsed.parsed), ...halfPieces(parsed.parsed, loadFarm().recipes)];
  if (unknown.length) return Response.json({ problems: unknown });
  return Response.json({ problems: [], coverage: draftCoverage(parsed.parsed, asked.bookingId) });
}

/** Coverage hangs on the day and the pieces: it is told before the client has a name. */
const withoutName = (form: unknown): unknown =>
  typeof form === "object" && form !== null && "client" in form ? { ...form, client: "New booking" } : form;
