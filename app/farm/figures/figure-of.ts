import { type MonthDay, monthDayInShort } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { FARM_SETTINGS, type FarmSetting } from "#lib/domain/records/farm-settings";
import { type FormField, formFields } from "#lib/domain/records/form";

/** A figure of the farm as its line shows it: "$" before it, the figure, and its unit after it. */
export type Figure = {
  readonly field: FormField;
  readonly before: string;
  readonly shown: string;
  readonly unit: string;
};

/** A setting that is one figure; a climate is chosen as a whole. */
export type FigureSetting = FarmSetting & { readonly group: Exclude<FarmSetting["group"], "climate"> };

export const FIGURES: readonly FigureSetting[] = FARM_SETTINGS.filter(
  (setting): setting is FigureSetting => setting.group !== "climate",
);

/** The name of a figure's control: "winter.tuberCents". */
export const controlName = ({ group, name }: FigureSetting): string => (group === null ? name : `${group}.${name}`);

/** The setting of that control name; undefined when there is none. */
export const settingNamed = (name: string): FigureSetting | undefined =>
  FIGURES.find((setting) => controlName(setting) === name);

/** What stands in a setting of the farm. */
export const settingValue = ({ group, name }: FigureSetting, farm: Farm): unknown => {
  const values: Readonly<Record<string, unknown>> = group === null ? farm : farm[group];
  return values[name];
};

/** What an empty figure means, where that is not "no limit". */
const EMPTY: Readonly<Record<string, string>> = {
  promiseLossCents: "more than any price",
  storeC: "not said",
  coldNightOn: "not said",
  coldNightLowC: "not said",
};

/** The figure of that control name. Throws RangeError when the farm has none. */
export function figureOf(name: string, farm: Farm): Figure {
  const setting = settingNamed(name);
  if (!setting) throw new RangeError(`the farm has no setting ${name}`);
  const value = settingValue(setting, farm);
  const root = name.slice(0, name.length - setting.name.length);
  const field = formFields({ [setting.name]: setting.field }, { [setting.name]: value }, { ...farm, root })[
    setting.name
  ];
  const [, money = "", unit = ""] = /^(\$?)(.*)$/.exec(field.unit ?? "") ?? [];
  if (field.values.length === 0) return { field, before: "", shown: EMPTY[name] ?? "no limit", unit: "" };
  const shown = wordsOf(field, value).replace(/\n/g, ", ") || "none";
  return { field, before: money, shown, unit: field.input === "text" ? "" : unit.trim() };
}

/** The figure in one piece: "$0.40", "14 clumps per hour". */
export const inOneWord = ({ before, shown, unit }: Figure): string => `${before}${shown}${unit ? ` ${unit}` : ""}`;

function wordsOf({ values, options }: FormField, value: unknown): string {
  const words = values.map((text) => options.find((option) => option.value === text)?.label ?? text).join(", ");
  return /^\d\d-\d\d$/.test(words) ? monthDayInShort(value as MonthDay) : words;
}
