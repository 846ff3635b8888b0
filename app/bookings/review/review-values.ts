import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { isWithinHad, MORE_THROWN_THAN_HAD, REVIEW, type ReviewDraft } from "#lib/domain/records/review";
import type { FormValues } from "../../ui/form-values";

/** What the page writes into an event's form: the roles that it asked for, each with the stems planned. */
const planned = z
  .array(z.tuple([REVIEW.role.schema, REVIEW.plannedStems.schema]))
  .min(1)
  .max(20);

/** Reads what became of an event's stems, role by role. "All used" is 0 thrown away, whatever number stands there. */
export function reviewsOfEvent(values: FormValues): Parsed<ReviewDraft[]> {
  const asked = values.parse(planned, values.json("planned"));
  if (!asked.ok) return asked;
  const bookingId = values.hiddenNumber("bookingId");
  const isAllUsed = values.text("all") === "yes";
  const drafts = asked.parsed.map(([role, plannedStems]): ReviewDraft => {
    const cutStems = stemsIn(values, `cut.${role}`, REVIEW.cutStems.schema);
    const boughtStems = stemsIn(values, `bought.${role}`, REVIEW.boughtStems.schema);
    const thrownAwayStems = isAllUsed ? 0 : stemsIn(values, `thrownAway.${role}`, REVIEW.thrownAwayStems.schema);
    if (!isWithinHad({ cutStems, boughtStems, thrownAwayStems }))
      values.refuse(`thrownAway.${role}`, MORE_THROWN_THAN_HAD);
    return { bookingId, role, plannedStems, cutStems, boughtStems, thrownAwayStems };
  });
  return values.parse(z.array(z.custom<ReviewDraft>()), drafts);
}

/** A number of stems; what is wrong with it is said at its field. */
function stemsIn(values: FormValues, name: string, schema: z.ZodType<number>): number {
  const stems = values.number(name);
  const read = schema.safeParse(stems);
  if (!read.success) values.refuse(name, read.error.issues[0].message);
  return stems;
}
