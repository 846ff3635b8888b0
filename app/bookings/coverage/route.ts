import { z } from "zod";
import { draftCoverage } from "../editor/draft-coverage";
import { parseBookingForm } from "../editor/parse-form";
import { unknownChoices } from "../editor/unknown-choices";

const asked = z.object({ bookingId: z.int().nullable(), form: z.unknown() });

/** The coverage of a booking as it is being typed: the lines, or all that stands in the way of them. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const body = asked.safeParse(await request.json().catch(() => null));
  if (!body.success)
    return Response.json({ problems: [{ place: "", message: "not a booking form" }] }, { status: 400 });
  const parsed = parseBookingForm(body.data.form);
  if (!parsed.ok) return Response.json({ problems: parsed.problems });
  const unknown = unknownChoices(parsed.parsed);
  if (unknown.length) return Response.json({ problems: unknown });
  return Response.json({ problems: [], coverage: draftCoverage(parsed.parsed, body.data.bookingId) });
}
