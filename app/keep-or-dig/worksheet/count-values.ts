import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import type { Planting } from "#lib/domain/records/planting";
import type { FormValues } from "../../ui/form-values";

/** Live clumps that were counted in spring: whole, and no more than were left in. */
export function readCount(values: FormValues, { plantCount }: Planting): Parsed<{ liveCount: number }> {
  const schema = z.object({
    liveCount: z
      .int("write whole clumps")
      .min(0, "clumps cannot be negative")
      .max(plantCount, `only ${plantCount} were left in`),
  });
  if (plantCount === 0) values.refuse("liveCount", "this planting has no clumps to count");
  return values.parse(schema, { liveCount: values.number("liveCount") });
}
