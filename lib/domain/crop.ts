import { z } from "zod";
import { originSchema } from "./sourced";
import { ROLES, SHAPES } from "./words";

const sourcedCount = (least: number, most: number, unit: string) =>
  z.object({
    count: z
      .number({ error: `write a number of ${unit}` })
      .min(least, `at least ${least} ${unit}`)
      .max(most, `at most ${most} ${unit}`),
    ...originSchema.shape,
  });

const sourcedWhole = (least: number, most: number, unit: string) =>
  sourcedCount(least, most, unit).refine(({ count }) => Number.isInteger(count), {
    path: ["count"],
    message: `write whole ${unit}`,
  });

/**
 * A crop (species): what the match must know of it. Every number carries its origin, so that a screen can show how sure we are.
 * `holdDays`: the most days between cut and event that the tool will plan for. `fieldDays`: how long an open bloom waits in the
 * field for the next picking day before it is lost.
 */
export const cropSchema = z.object({
  id: z.int(),
  name: z.string().min(1, "a crop needs a name"),
  scientific: z.string(),
  shape: z.enum(SHAPES),
  roles: z.array(z.enum(ROLES)).min(1, "a crop needs at least one role"),
  usualRole: z.enum(ROLES),
  tender: z.boolean(),
  overwinters: z.boolean(),
  holdDays: sourcedCount(0, 120, "days"),
  fieldDays: sourcedCount(0, 60, "days"),
  bunchStems: sourcedWhole(1, 100, "stems"),
  bucketStems: sourcedWhole(1, 500, "stems"),
  buyInCents: sourcedWhole(1, 100_000, "cents"),
  cutStage: z.string(),
  cautions: z.array(z.string()),
});
export type Crop = z.infer<typeof cropSchema>;
