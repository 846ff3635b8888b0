import { z } from "zod";
import { type Farm, type FrostDates, farmSchema, type WinterCosts, winterCostsSchema } from "#lib/domain/farm";
import { DOLLARS, MEASURES, type Measure, PERCENT } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import { UNITS } from "#lib/domain/words";
import type { FormValues } from "../../ui/form-values";

const PERCENTAGE = "a percentage from 0 to 100";
export const FROST_FIELDS = [
  "firstAutumnP10",
  "firstAutumnP50",
  "firstAutumnP90",
  "lastSpringP10",
  "lastSpringP50",
  "lastSpringP90",
] as const satisfies readonly (keyof FrostDates)[];

/** The farm with the settings that the form of settings holds; what it does not hold stays. */
export function readSettings(values: FormValues, farm: Farm): Parsed<Farm> {
  const percent = (name: string, before: number) =>
    values.number(name, { measure: PERCENT, before, range: PERCENTAGE });
  const weight = (status: "confirmed" | "held" | "enquiry") =>
    values.number(`statusWeights.${status}`, {
      measure: PERCENT,
      before: farm.statusWeights[status],
      range: "a percentage above 0 and at most 100",
    });
  return values.parse(farmSchema, {
    ...farm,
    name: values.text("name"),
    zone: values.text("zone"),
    units: values.text("units"),
    pickingWeekdays: values.texts("pickingWeekdays").map(Number),
    leadDays: values.number("leadDays"),
    orderDaysAhead: values.number("orderDaysAhead"),
    spareShare: percent("spareShare", farm.spareShare),
    frost: Object.fromEntries(FROST_FIELDS.map((field) => [field, values.text(`frost.${field}`)])),
    statusWeights: { confirmed: weight("confirmed"), held: weight("held"), enquiry: weight("enquiry") },
  });
}

/** A number of the winter as its form shows it. `isOpen`: it may be left empty. */
export type WinterField = {
  readonly name: keyof WinterCosts;
  readonly label: string;
  readonly measure: Measure;
  readonly hint?: string;
  readonly isOpen?: boolean;
};

const plain = (word: string): Measure => ({ word, shownPerStored: 1, decimals: 3 });

/** The numbers of the winter in the farm's units, in groups as they are thought of. */
export function winterFields(
  units: Farm["units"],
): { readonly title: string; readonly fields: readonly WinterField[] }[] {
  const { depth, area, volume, dollarsPerVolume, dollarsPerArea, hoursPerArea } = MEASURES[units];
  return [
    {
      title: "Work",
      fields: [
        { name: "wageCentsPerHour", label: "An hour of work costs", measure: DOLLARS },
        { name: "digClumpsPerHour", label: "Digging", measure: plain("clumps per hour") },
        { name: "divideClumpsPerHour", label: "Washing, dividing, packing", measure: plain("clumps per hour") },
        { name: "replantTubersPerHour", label: "Replanting in spring", measure: plain("tubers per hour") },
        { name: "coverHoursPerSquareMetre", label: "Covering and uncovering", measure: hoursPerArea },
      ],
    },
    {
      title: "Tubers and storage",
      fields: [
        { name: "storageCentsPerClump", label: "Storage of a clump", measure: DOLLARS },
        {
          name: "storageLossShare",
          label: "Lost in store",
          measure: PERCENT,
          hint: "7.5 % to start from: the middle of 5 to 10 %, published by the American Dahlia Society.",
        },
        { name: "divisionsPerClump", label: "Tubers from a clump", measure: plain("tubers") },
        { name: "tuberCents", label: "A tuber costs", measure: DOLLARS },
        {
          name: "tubersWantedShare",
          label: "Of the tubers gained, wanted",
          measure: PERCENT,
          hint: "For more beds or for sale; only these save money.",
        },
      ],
    },
    {
      title: "Keeping in the ground",
      fields: [
        {
          name: "leafDepthMetres",
          label: "Depth of leaves",
          measure: depth,
          hint: "8 inches (20 cm) to start from: published for straw in North Carolina.",
        },
        { name: "leafCentsPerCubicMetre", label: "Leaves cost", measure: dollarsPerVolume },
        { name: "tarpCentsPerSquareMetre", label: "Tarp for a winter costs", measure: dollarsPerArea },
        {
          name: "freeBedCentsPerSquareMetre",
          label: "An early crop in a free bed brings",
          measure: dollarsPerArea,
          hint: "Lost when the bed stays full until the dahlias bloom.",
        },
      ],
    },
    {
      title: "What is at hand",
      fields: [
        { name: "leafCubicMetresAtHand", label: "Leaves at hand", measure: volume, isOpen: true },
        { name: "tarpSquareMetresAtHand", label: "Tarp at hand", measure: area, isOpen: true },
        { name: "hoursAtHand", label: "Hours at hand", measure: plain("hours"), isOpen: true },
        {
          name: "keepShareAtMost",
          label: "Keep at most",
          measure: { ...PERCENT, word: "% of the beds that could stay" },
          isOpen: true,
          hint: "New to it? A first winter on a tenth of the beds is a trial that costs little.",
        },
      ],
    },
  ];
}

const farmWinterSchema = z.object({ winter: winterCostsSchema });

/** The winter as its form says. */
export function readWinter(values: FormValues, { units, winter }: Farm): Parsed<{ winter: WinterCosts }> {
  const read = ({ name, measure, isOpen }: WinterField) => {
    const range =
      measure.shownPerStored === PERCENT.shownPerStored && measure.word.startsWith("%") ? PERCENTAGE : undefined;
    const reading = { measure, before: winter[name], range };
    return [name, isOpen ? values.numberOrNull(`winter.${name}`, reading) : values.number(`winter.${name}`, reading)];
  };
  const survival = { measure: PERCENT, before: winter.winterSurvivalShare, range: PERCENTAGE };
  return values.parse(farmWinterSchema, {
    winter: {
      ...Object.fromEntries(winterFields(units).flatMap(({ fields }) => fields.map(read))),
      winterSurvivalShare: values.number("winter.winterSurvivalShare", survival),
    },
  });
}

/** What someone says who starts a farm of their own. */
const ownFarmSchema = z.object({ name: farmSchema.shape.name, empties: z.boolean() });

export const readOwnFarm = (values: FormValues) =>
  values.parse(ownFarmSchema, { name: values.text("name"), empties: values.isTicked("empties") });

export const UNIT_OPTIONS = UNITS.map((value) => ({
  value,
  label: value === "us" ? "feet, inches, °F, cubic yards" : "metres, °C, cubic metres",
}));
