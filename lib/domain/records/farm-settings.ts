import { z } from "zod";
import { WEEKDAYS } from "../day";
import { daySchema, monthDaySchema } from "../day-schema";
import { DECIMAL_MARKS } from "../read-number";
import { sameWord } from "../same-word";
import { COLOURS, UNITS } from "../words";
import { DATE_ORDERS } from "../writing";
import { CAPACITY } from "./capacity";
import { climateSchema, OPEN_CLIMATE } from "./climate";
import { EVENT_DAYS_HABIT, oddEventDays } from "./event-days";
import { cents, count, type Field, field, headingOf, likelihood, number, open, recordSchema, share } from "./field";
import { FINAL_COUNT_HABIT } from "./final-count";
import { KILLING_FROSTS } from "./killing-frosts";
import { choice, day, linesOf, listOf, monthDay, ownColour, weekday, word, yesNo } from "./kinds";
import { LEARNED_WINTERS } from "./learned-winters";
import { WINTER_COSTS, winterCostsSchema } from "./winter-costs";

/** More names than anybody has for colours. */
const MOST_OWN_COLOURS = 200;

const ownColourSchema = z.object({
  name: z
    .string()
    .min(1, "a colour needs a name")
    .max(40, "a colour's name has at most 40 letters")
    .refine((name) => !/[=/,;&+\\\n]|\band\b/i.test(name), "a colour's name has no = / , ; & + in it, nor the word and")
    .refine((name) => !COLOURS.some((colour) => colour === name.toLowerCase()), "this colour is one of ours already"),
  colour: z.enum(COLOURS),
});

const ownColoursSchema = z
  .array(ownColourSchema)
  .max(MOST_OWN_COLOURS, `at most ${MOST_OWN_COLOURS} colours of your own`)
  .refine(
    (colours) => new Set(colours.map(({ name }) => sameWord(name))).size === colours.length,
    "a colour of your own stands twice: keep one of the two",
  );

/** Where cut flowers can stand at all, degrees Celsius. */
const STORE = { measure: "temperature", least: -5, most: 40 } as const;

/** Lows of nights that a grower in bloom looks at, degrees Celsius. */
const LOW = { measure: "temperature", least: -30, most: 20 } as const;

/** The settings that stand alone. */
export const FARM = {
  name: field(word, z.string().trim().min(1, "the farm needs a name").max(120, "a name has at most 120 letters"), {
    label: "Name of the farm",
  }),
  isInvented: field(yesNo, z.boolean(), { label: "Invented" }),
  zone: field(word, z.string().trim().max(10, "a zone such as 7a"), { label: "Hardiness zone" }),
  units: field(choice(UNITS), z.enum(UNITS), {
    label: "Units shown",
    meanings: { us: "feet, inches, °F, cubic yards", metric: "metres, °C, cubic metres" },
  }),
  decimalMark: field(choice(DECIMAL_MARKS), z.enum(DECIMAL_MARKS), {
    label: "Decimals are written with a",
    hint: "In forms and in files: 1.5 with a point, 1,5 with a comma.",
  }),
  dateOrder: field(choice(DATE_ORDERS), z.enum(DATE_ORDERS), {
    label: "6/12/2027 in a file is",
    meanings: { ask: "asked each time", "month first": "12 June, month first", "day first": "6 December, day first" },
  }),
  ownColours: field(linesOf(ownColour), ownColoursSchema, {
    absent: [],
    label: "Colour names of your own, one a line",
    hint: "Read as our colour wherever they are pasted or come in a file. For example: antique rose = pink.",
  }),
  pickingWeekdays: field(
    listOf(weekday),
    z.array(z.int().min(1).max(WEEKDAYS.length)).min(1, "choose at least one picking day"),
    {
      label: "Picking days",
      hint: "A bloom that opens between them waits in the field for the next, as long as its crop allows.",
    },
  ),
  ...EVENT_DAYS_HABIT,
  orderDaysAhead: count({ of: "days", unit: "days", least: 0, most: 365, label: "Order what is bought, ahead" }),
  enquiryDays: count({
    of: "days",
    unit: "days",
    least: 1,
    most: 365,
    absent: 14,
    heading: "enquiry_days",
    label: "An enquiry lapses after",
    hint: "What a new one starts with; each can have its own day. Two weeks: our habit.",
  }),
  holdDays: count({
    of: "days",
    unit: "days",
    least: 1,
    most: 365,
    absent: 30,
    heading: "hold_days",
    label: "A hold lapses after",
    hint: "What a new one starts with; each can have its own day. A month: our habit.",
  }),
  ...FINAL_COUNT_HABIT,
  spareShare: share({ label: "Spare of a new booking", hint: "Added for breakage." }),
  promiseLossCents: open(
    cents({
      label: "Lost by a promised stem that is missing",
      hint: "Beside the price of buying it in. Left empty it is ours: a hundred dollars or more, above any price and any chain of worse fits, so that no later booking takes what was promised.",
    }),
  ),
  storeC: open(number({ ...STORE, label: "Cut stems stand at" }), {
    heading: "store_c",
    hint: "The cooler; the cool room where there is no cooler. Left empty: each crop keeps its days whatever the store.",
  }),
  coolRoomC: number({
    ...STORE,
    absent: 13,
    heading: "cool_room_c",
    label: "What cold hurts stands at",
    hint: "The coolest room that is not the cooler.",
  }),
  storesDry: field(yesNo, z.boolean(), {
    absent: true,
    label: "What keeps longer dry is stored dry",
    hint: "Peonies in bud, tulips, stock.",
  }),
  followsSeason: field(yesNo, z.boolean(), {
    absent: true,
    label: "The plan goes by what the season has shown",
    hint: "Cuts and buds that were recorded move what is still ahead, of this season only.",
  }),
  frostAlarmC: number({
    ...LOW,
    absent: 2,
    heading: "frost_alarm_c",
    label: "The frost alarm sounds at a low of",
    hint: "Or colder. A bed in a hollow freezes while a thermometer at eye height reads a few degrees more.",
  }),
  ...CAPACITY,
};

/** What is known of the next cold night, beside the weather file; both or neither. */
export const COLD_NIGHT = {
  coldNightOn: open(
    field(day, daySchema, {
      label: "Morning of the coldest night ahead",
      hint: "The day in whose small hours it is coldest.",
    }),
  ),
  coldNightLowC: open(number({ ...LOW, label: "Its low, as forecast" })),
};

const frostDay = (heading: string, label: string) => field(monthDay, monthDaySchema, { heading, label });

export const FROST = {
  firstAutumnP10: frostDay("frost_first_autumn_p10", "First frost of autumn, early year"),
  firstAutumnP50: frostDay("frost_first_autumn_p50", "First frost of autumn"),
  firstAutumnP90: frostDay("frost_first_autumn_p90", "First frost of autumn, late year"),
  lastSpringP10: frostDay("frost_last_spring_p10", "Last frost of spring, late year"),
  lastSpringP50: frostDay("frost_last_spring_p50", "Last frost of spring"),
  lastSpringP90: frostDay("frost_last_spring_p90", "Last frost of spring, early year"),
};

/**
 * The first frost of autumn and the last of spring, as dates that 10, 50 and 90 of 100 years have reached.
 * Autumn: p10 is early (one year in ten has had frost by then), p90 late. Spring: p10 is late (one year in ten has frost
 * after it), p90 early. The sense is that of the US climate normals (NCEI); tables with spring reversed exist.
 */
export const frostDatesSchema = recordSchema(FROST).superRefine((frost, context) => {
  const say = (path: string, message: string) => context.addIssue({ code: "custom", path: [path], message });
  if (!(frost.firstAutumnP10 <= frost.firstAutumnP50 && frost.firstAutumnP50 <= frost.firstAutumnP90))
    say("firstAutumnP50", "autumn frost dates must come in order: 10 % first, 90 % last");
  if (!(frost.lastSpringP90 <= frost.lastSpringP50 && frost.lastSpringP50 <= frost.lastSpringP10))
    say("lastSpringP50", "spring frost dates must come in order: 90 % first, 10 % last");
});
export type FrostDates = z.infer<typeof frostDatesSchema>;

export const STATUS_WEIGHTS = {
  confirmed: likelihood({ heading: "weight_confirmed", label: "Confirmed" }),
  held: likelihood({ heading: "weight_held", label: "Held" }),
  enquiry: likelihood({ heading: "weight_enquiry", label: "Enquiry" }),
};

/**
 * How likely the stems of a booking will be wanted, by its status: an uncovered stem costs its buy-in price times this, which is the money it is
 * expected to cost, and so the weight of its claim. The built-in shares are our own guess.
 */
export const statusWeightsSchema = recordSchema(STATUS_WEIGHTS).refine(
  (weight) => weight.confirmed > weight.held && weight.held > weight.enquiry,
  { path: ["confirmed"], message: "confirmed must weigh more than held, and held more than an enquiry" },
);

/**
 * The farm's own settings. `pickingWeekdays`: Monday 1 … Sunday 7. Of the event days see `EVENT_DAYS_HABIT`.
 * `storeC`, `coolRoomC`: degrees Celsius; `storeC` is null until the farm has said how its stems are kept.
 * `coldNightOn` and `coldNightLowC`: the night that is forecast to be coldest, null where none was typed.
 * `killingFrosts`: the first frost that ended tender crops, of each year in which one was written down.
 * `climate` is null until the farm has chosen one: bloom then goes by the calendar alone.
 */
export const farmSchema = recordSchema({ ...FARM, ...COLD_NIGHT, ...KILLING_FROSTS, ...LEARNED_WINTERS })
  .extend({
    frost: frostDatesSchema,
    climate: climateSchema.nullable(),
    statusWeights: statusWeightsSchema,
    winter: winterCostsSchema,
  })
  .superRefine((farm, context) => {
    for (const { field, message } of oddEventDays(farm)) context.addIssue({ code: "custom", path: [field], message });
  });
export type Farm = z.infer<typeof farmSchema>;

/** A setting as the farm sheet writes it, a row each. `group` is where its field lies in a Farm; null means at the top. */
export type FarmSetting = {
  readonly heading: string;
  readonly group: "frost" | "climate" | "statusWeights" | "winter" | null;
  readonly name: string;
  readonly field: Field<unknown>;
};

const settingsOf = (fields: Readonly<Record<string, Field<unknown>>>, group: FarmSetting["group"]): FarmSetting[] =>
  Object.entries(fields).map(([name, field]) => ({ heading: headingOf(name, field), group, name, field }));

/** Every setting of a farm, in the order of the farm sheet. */
export const FARM_SETTINGS: readonly FarmSetting[] = [
  ...settingsOf(FARM, null),
  ...settingsOf(COLD_NIGHT, null),
  ...settingsOf({ ...KILLING_FROSTS, ...LEARNED_WINTERS }, null),
  ...settingsOf(FROST, "frost"),
  ...settingsOf(OPEN_CLIMATE, "climate"),
  ...settingsOf(STATUS_WEIGHTS, "statusWeights"),
  ...settingsOf(WINTER_COSTS, "winter"),
];
