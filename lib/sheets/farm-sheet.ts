import { z } from "zod";
import { type Farm, farmSchema, frostDatesSchema, statusWeightsSchema, winterCostsSchema } from "#lib/domain/farm";
import { FARM_SETTINGS, type FarmSetting } from "#lib/domain/farm-settings";
import { didYouMean } from "#lib/domain/nearest-name";
import { choice, decimal, type Kind, listOf, monthDay, prose, weekday, word, yesNo } from "#lib/domain/records/kinds";
import { UNITS } from "#lib/domain/words";
import { type ColumnsOf, needed, type RowOf } from "./columns";
import { type Place, placeInWords } from "./sheet-problem";
import { columnKey, linkRows, type SheetRows } from "./sheet-rows";

/** A setting a row. Settings that do not stand in the sheet keep the value they have. An empty value means "no limit" where there is one. */
export const FARM_COLUMNS = {
  setting: needed(word, z.string()),
  value: needed(prose, z.string()),
} satisfies ColumnsOf<"farm">;

type SettingValue = { readonly setting: FarmSetting; readonly value: unknown };

const SCHEMAS = { frost: frostDatesSchema, statusWeights: statusWeightsSchema, winter: winterCostsSchema };

function schemaOf({ group, field }: FarmSetting): z.ZodType {
  const shape: Record<string, z.ZodType> = group ? SCHEMAS[group].shape : farmSchema.shape;
  return shape[field] ?? z.never();
}

function cellOf({ group, field }: FarmSetting): Kind<never> {
  if (group === "frost") return monthDay;
  if (group) return decimal;
  if (field === "isInvented") return yesNo;
  if (field === "units") return choice(UNITS);
  if (field === "pickingWeekdays") return listOf(weekday);
  return field === "name" || field === "zone" ? word : decimal;
}

/** The settings that the rows give, and the farm with them, or null when no row is clean. */
export type FarmReading = { readonly rows: SheetRows<SettingValue>; readonly farm: Farm | null };

/** Reads the rows of the farm sheet over the farm as it is. Values that do not go together are refused with their group. */
export function readFarmSettings(sheet: SheetRows<RowOf<typeof FARM_COLUMNS>>, current: Farm): FarmReading {
  const seen = new Map<string, Place>();
  const settings = linkRows(sheet, (row, say, { place }): SettingValue | null => {
    const setting = FARM_SETTINGS.find(({ name }) => name === columnKey(row.setting));
    if (!setting) {
      const names = FARM_SETTINGS.map(({ name }) => name);
      const guess = didYouMean(columnKey(row.setting), names) || `, or write one of ${names.join(", ")}`;
      say("setting", `no setting called "${row.setting}": take the row out${guess}`);
      return null;
    }
    const earlier = seen.get(setting.name);
    if (earlier) say("setting", `${setting.name} stands on ${placeInWords(earlier)} already: keep one of the two rows`);
    else seen.set(setting.name, place);
    const schema = schemaOf(setting);
    if (row.value.trim() === "" && schema.safeParse(null).success) return { setting, value: null };
    if (row.value.trim() === "" && !schema.safeParse("").success) {
      say(
        "value",
        `${setting.name} is empty: write ${cellOf(setting).hint}, or take the row out to keep the farm's value`,
      );
      return null;
    }
    const reading = needed(cellOf(setting), schema).read(row.value);
    if (!reading.ok) say("value", reading.message);
    return reading.ok ? { setting, value: reading.value } : null;
  });
  const checked = refuseUnfit(settings, current);
  const merged = farmSchema.safeParse(withSettings(current, checked));
  return { rows: checked, farm: merged.success && checked.rows.some(({ record }) => record) ? merged.data : null };
}

function withSettings(current: Farm, { rows }: SheetRows<SettingValue>): unknown {
  const groups = {
    frost: { ...current.frost },
    statusWeights: { ...current.statusWeights },
    winter: { ...current.winter },
  };
  const farm: Record<string, unknown> = { ...current, ...groups };
  for (const { record } of rows) {
    if (!record) continue;
    const target: Record<string, unknown> = record.setting.group ? groups[record.setting.group] : farm;
    target[record.setting.field] = record.value;
  }
  return farm;
}

/** Rows of a group whose values do not go together (frost dates out of order) are not clean; each says why. */
function refuseUnfit(settings: SheetRows<SettingValue>, current: Farm): SheetRows<SettingValue> {
  const issues = farmSchema.safeParse(withSettings(current, settings)).error?.issues ?? [];
  const messages = new Map<unknown, string>(issues.map(({ path, message }) => [path[0], message]));
  return linkRows(settings, (record, say) => {
    const message = record.setting.group && messages.get(record.setting.group);
    if (message) say("value", `${record.setting.name} does not go with the others of its kind: ${message}`);
    return record;
  });
}
