import { z } from "zod";
import { daySchema } from "./day";
import { FIRST_SEASON, LAST_SEASON } from "./season-years";
import { TREATMENTS } from "./words";

/** Reasons of the ground to lift a bed whatever the sum says. */
export const BED_FLAGS = ["wet soil", "vole damage", "wanted for something else"] as const;
export type BedFlag = (typeof BED_FLAGS)[number];

/** Reasons of the plants to lift them whatever the sum says. */
export const PLANTING_FLAGS = ["virus or gall", "old crowded clumps", "too precious to risk"] as const;
export type PlantingFlag = (typeof PLANTING_FLAGS)[number];

/**
 * A fixed growing strip. After a spray nobody cuts in it from `noEntryFrom` until the day before `noEntryUntil`;
 * the interval is the label's, typed by the user, never ours.
 */
export const bedSchema = z
  .object({
    id: z.int(),
    name: z.string().trim().min(1, "a bed needs a name").max(60, "a bed's name has at most 60 letters"),
    lengthMetres: z.number("write the length as a number").gt(0, "longer than 0").max(1000, "at most 1,000 metres"),
    widthMetres: z.number("write the width as a number").gt(0, "wider than 0").max(100, "at most 100 metres"),
    flags: z.array(z.enum(BED_FLAGS)),
    noEntryFrom: daySchema.nullable(),
    noEntryUntil: daySchema.nullable(),
    note: z.string(),
  })
  .superRefine((bed, context) => {
    if ((bed.noEntryFrom === null) !== (bed.noEntryUntil === null))
      context.addIssue({
        code: "custom",
        path: ["noEntryUntil"],
        message: "a spray needs both days: sprayed on, and no entry until",
      });
    if (bed.noEntryFrom && bed.noEntryUntil && bed.noEntryUntil <= bed.noEntryFrom)
      context.addIssue({ code: "custom", path: ["noEntryUntil"], message: "must come after the day of the spray" });
  });
export type Bed = z.infer<typeof bedSchema>;

export const areaSquareMetres = (bed: Bed): number => bed.lengthMetres * bed.widthMetres;

/**
 * A variety in a bed for one season. `plantCount` are plants set out or left in; `aliveShare` the share expected to stand at the first
 * cut; `gradeOutShare` the share of cut stems that are not saleable (apart from a booking's spare: the two multiply).
 * `winterSurvivalShare` is the grower's own expectation for a bed kept in the ground; null takes the farm's.
 */
export const plantingSchema = z.object({
  id: z.int(),
  bedId: z.int(),
  varietyId: z.int(),
  seasonYear: z.int("write a year").min(FIRST_SEASON, "a year from 1990").max(LAST_SEASON, "a year up to 2200"),
  treatment: z.enum(TREATMENTS),
  plantedOn: daySchema,
  plantCount: z
    .int("write whole plants")
    .min(0, "plants cannot be negative")
    .max(1_000_000, "at most 1,000,000 plants"),
  aliveShare: z.number().min(0, "a share from 0 to 1").max(1, "a share from 0 to 1"),
  gradeOutShare: z.number().min(0, "a share from 0 to 1").max(1, "a share from 0 to 1"),
  winterSurvivalShare: z.number().min(0, "a share from 0 to 1").max(1, "a share from 0 to 1").nullable(),
  flags: z.array(z.enum(PLANTING_FLAGS)),
});
export type Planting = z.infer<typeof plantingSchema>;
