import { z } from "zod";
import { ROLE_WORDS } from "../trade-words";
import { COLOURS, ROLES, SHAPES } from "../words";
import { field, open, originField, recordSchema, rowId, sourced } from "./field";
import { choice, colour, linesOf, listOf, month, prose, word, yesNo } from "./kinds";
import { STEM_TRAITS } from "./stem-traits";

/** The numbers of a crop that carry their origin, so that a screen can show how sure we are. */
export const CROP_NUMBERS = {
  holdDays: sourced({
    least: 0,
    most: 120,
    of: "days",
    unit: "days",
    label: "Hold",
    hint: "The most days between cut and event that it keeps as good as fresh, stood in water.",
    originHeading: "hold_origin",
  }),
  stretchDays: sourced({
    least: 0,
    most: 120,
    absent: 0,
    of: "days",
    unit: "days",
    label: "Hold at a stretch",
    hint: "Where nothing fresher is left: shown, and paid for with up to half the stem’s price. Not longer than its hold: never.",
    originHeading: "stretch_origin",
  }),
  dryHoldDays: sourced({
    least: 0,
    most: 120,
    absent: 0,
    of: "days",
    unit: "days",
    label: "Hold, stored dry",
    hint: "Counts where it is longer than the hold in water and the farm stores dry.",
    originHeading: "dry_hold_origin",
  }),
  holdUpToC: sourced({
    least: -5,
    most: 40,
    absent: 5,
    measure: "temperature",
    label: "Keeps so in a store up to",
    hint: "In a warmer one its days shrink: to a third for each 10 °C (18 °F) more.",
    heading: "hold_up_to_c",
    originHeading: "hold_up_to_origin",
  }),
  notColderC: sourced({
    least: -5,
    most: 40,
    absent: 0,
    measure: "temperature",
    label: "Not to stand colder than",
    hint: "Where the store is colder it stands in the cool room.",
    heading: "not_colder_c",
    originHeading: "not_colder_origin",
  }),
  cutSpareShare: sourced({
    least: 0,
    most: 1,
    absent: 0,
    measure: "percent",
    label: "Cut beyond what is used",
    hint: "For what wilts or breaks: of 115 stems cut at 15 %, 100 can be promised. A booking’s spare comes on top.",
    originHeading: "cut_spare_origin",
  }),
  fieldDays: sourced({
    least: 0,
    most: 60,
    of: "days",
    unit: "days",
    label: "Waits in the field",
    hint: "Once open, before it is lost.",
    originHeading: "field_origin",
  }),
  bunchStems: sourced({
    isWhole: true,
    least: 1,
    most: 100,
    of: "stems",
    unit: "stems",
    label: "A bunch",
    hint: "As it is bought in and bunched.",
    originHeading: "bunch_origin",
  }),
  bucketStems: sourced({
    isWhole: true,
    least: 1,
    most: 500,
    of: "stems",
    unit: "stems",
    label: "A bucket",
    hint: "Full buckets are heavy.",
    originHeading: "bucket_origin",
  }),
  buyInCents: sourced({
    isWhole: true,
    least: 1,
    most: 100_000,
    of: "cents",
    measure: "dollars",
    label: "Buy-in price of a stem",
    originHeading: "buy_in_origin",
  }),
};

/** When and in what colours a crop is to be had from others, and where we have that from. */
export const TRADE = {
  buyInColours: field(listOf(colour), z.array(z.enum(COLOURS)), {
    absent: [],
    label: "Colours to be had",
    hint: "Empty: any colour.",
  }),
  buyInMonths: field(listOf(month), z.array(z.int().min(1).max(12)), {
    absent: [],
    label: "Months to be had",
    hint: "By the day that it arrives. Empty: all year.",
  }),
  tradeOrigin: originField({ label: "Origin of colours and months to be had", heading: "trade_origin" }),
};

/** A crop as its form and its rows write it. */
export const CROP = {
  name: field(word, z.string().min(1, "a crop needs a name"), { label: "Name", heading: "crop" }),
  scientific: field(prose, z.string(), { absent: "", label: "Scientific name" }),
  shape: field(choice(SHAPES), z.enum(SHAPES), { label: "Shape of the flower" }),
  roles: field(listOf(choice(ROLES, ROLE_WORDS)), z.array(z.enum(ROLES)).min(1, "a crop needs at least one role"), {
    label: "Roles it can take",
    hint: "A need for a role takes every variety whose crop has it.",
  }),
  usualRole: field(choice(ROLES, ROLE_WORDS), z.enum(ROLES), { label: "Usual role" }),
  ...STEM_TRAITS,
  traitsOrigin: originField({ label: "Origin of head, stem and out of water", heading: "traits_origin" }),
  tender: field(yesNo, z.boolean(), { absent: false, label: "Tender: the first frost ends it" }),
  overwinters: field(yesNo, z.boolean(), {
    absent: false,
    label: "Can stay in the ground or be dug over winter",
  }),
  ...CROP_NUMBERS,
  ...TRADE,
  cutStage: field(prose, z.string(), { absent: "", label: "Stage to cut at" }),
  cautions: field(linesOf(word), z.array(z.string()), {
    absent: [],
    label: "Cautions, one a line",
    hint: "Shown wherever its stems go into personals or near food. A plant without a caution is not proved safe.",
  }),
};

/**
 * A crop a row. Absent or empty: `scientific`, `cut_stage` and `cautions` say nothing, `usual_role` is the first of `roles`, `head_size`,
 * `stem_length` and `out_of_water` are not told, `tender`
 * and `overwinters` are no, `buy_in_colours` and `buy_in_months` are all of them, and each origin is "own".
 */
export const CROP_SHEET = { ...CROP, usualRole: open(CROP.usualRole) };

/**
 * A crop (species): what the match must know of it. `holdDays`: the most days between cut and event that the tool will plan for.
 * `fieldDays`: how long an open bloom waits in the field for the next picking day before it is lost.
 */
export const cropSchema = recordSchema({ id: rowId("Id"), ...CROP });
export type Crop = z.infer<typeof cropSchema>;

/** A crop as its form says it: the usual role is one of its roles. */
export const cropFormSchema = recordSchema(CROP).refine(({ roles, usualRole }) => roles.includes(usualRole), {
  path: ["usualRole"],
  message: "the usual role must be one of the crop’s roles",
});
