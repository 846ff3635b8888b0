import { z } from "zod";
import { daySchema } from "../day-schema";
import { FIRST_SEASON, LAST_SEASON } from "../season-years";
import { OTHER_TREATMENTS } from "../trade-words";
import { TREATMENT_WORDS, TREATMENTS } from "../words";
import { count, field, number, open, type RecordOf, recordSchema, rowId, share } from "./field";
import { choice, day, listOf, whole, yesNo } from "./kinds";
import { nameOf } from "./names";
import { VARIETY_NAMES } from "./variety";

/** Reasons of the plants to lift them whatever the sum says. */
export const PLANTING_FLAGS = ["virus or gall", "old crowded clumps", "too precious to risk"] as const;
export type PlantingFlag = (typeof PLANTING_FLAGS)[number];

/** How many days early or late a planting can be said to be in a season, and how many times its stems it can be said to give. */
export const MOST_DAYS_LATE = 120;
export const MOST_YIELD_FACTOR = 5;

/** What a grower says of one season of a planting, on top of its curve and of no other season [F15]; left open where she says nothing. */
export const SEASON_ALONE = {
  daysLate: open(
    count({
      of: "days",
      unit: "days",
      least: -MOST_DAYS_LATE,
      most: MOST_DAYS_LATE,
      label: "Late this season",
      hint: "Days that its first cut comes later than the curve says, this season only; -5 is five days earlier.",
    }),
  ),
  yieldFactor: open(
    number({
      measure: "percent",
      least: 0,
      most: MOST_YIELD_FACTOR,
      label: "Stems this season",
      hint: "Of what the curve says, this season only: 80 % where a fifth is missing.",
    }),
  ),
};

const planting = {
  seasonYear: field(
    whole,
    z.int("write a year").min(FIRST_SEASON, "a year from 1990").max(LAST_SEASON, "a year up to 2200"),
    {
      label: "Season",
      heading: "season",
    },
  ),
  treatment: field(choice(TREATMENTS, OTHER_TREATMENTS), z.enum(TREATMENTS), {
    label: "How it is grown",
    meanings: TREATMENT_WORDS,
  }),
  plantedOn: field(day, daySchema, { label: "Planted or sown on" }),
  sown: field(yesNo, z.boolean(), {
    absent: false,
    label: "Sown in place",
    hint: "Counts from sowing, which takes the curve’s days more than from setting out.",
  }),
  plantCount: count({
    of: "plants",
    least: 0,
    most: 1_000_000,
    label: "Plants",
    heading: "plants",
    hint: "Set out, or left in.",
  }),
  ageSeasons: open(
    count({
      of: "seasons",
      unit: "seasons",
      least: 1,
      most: 100,
      label: "Season of its life",
      hint: "1 in the season after it is set out. Left empty, a perennial is taken as grown.",
    }),
  ),
  aliveShare: share({ absent: 1, label: "Alive at first cut" }),
  gradeOutShare: open(
    share({
      label: "Graded out",
      hint: "Cut stems that are not fit to use. Left empty: as the bloom curve says, season by season.",
    }),
  ),
  winterSurvivalShare: open(share({ label: "Survival in the ground" })),
  ...SEASON_ALONE,
  flags: field(listOf(choice(PLANTING_FLAGS)), z.array(z.enum(PLANTING_FLAGS)), {
    absent: [],
    label: "Reasons of the plants to dig over winter",
  }),
};

/** Whether the grower has told the share graded out: beside a planting's row, which holds 0 where she has not. */
export const GRADE_OUT_TOLD = field(yesNo, z.boolean(), { absent: true, label: "Graded out by your own share" });

/** A planting as its form writes it. */
export const PLANTING = { bedId: rowId("Bed"), varietyId: rowId("Variety"), ...planting };

/**
 * A planting a row. Absent or empty: `colour` is that of the variety (on the farm, in the varieties sheet or in a row above),
 * `alive_share` 1, `grade_out_share` as the bloom curve says, `winter_survival_share` the farm's, nothing said of the season, and no flags.
 */
export const PLANTING_SHEET = { bed: nameOf("Bed"), ...VARIETY_NAMES, ...planting };

/** A planting before it has an id. */
export type PlantingDraft = RecordOf<typeof PLANTING>;

/**
 * A variety in a bed for one season. `plantCount` are plants set out or left in; `aliveShare` the share expected to stand at the first
 * cut; `gradeOutShare` the share of cut stems that are not saleable (apart from a booking's spare: the two multiply), null where the curve tells it [F17].
 * `sown`: `plantedOn` is the day it was sown in place, and not that of setting out plants, bulbs or tubers.
 * `ageSeasons` is the season of the plants' life, 1 the first, null where nobody has told it: they are then taken as grown.
 * `winterSurvivalShare` is the grower's own expectation for a bed kept in the ground; null takes the farm's.
 * `daysLate` and `yieldFactor` are the grower's own word of this season alone, on top of the curve [F15]; null where she has said nothing.
 */
export const plantingSchema = recordSchema({ id: rowId("Id"), ...PLANTING });
export type Planting = z.infer<typeof plantingSchema>;
