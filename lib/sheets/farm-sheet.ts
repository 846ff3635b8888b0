import { didYouMean } from "#lib/domain/nearest-name";
import { DECIMAL_MARKS, type DecimalMark } from "#lib/domain/read-number";
import { climateColumns, climateOfColumns } from "#lib/domain/records/climate";
import { EVENT_DAYS_HABIT } from "#lib/domain/records/event-days";
import { FARM_SETTINGS, type Farm, type FarmSetting, farmSchema } from "#lib/domain/records/farm-settings";
import { readCell, writeCell } from "./columns";
import { columnKey } from "./headings";
import { settingRows } from "./rows-of-records";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

type SettingValue = { readonly setting: FarmSetting; readonly value: unknown };

/** The settings that the rows give, each with the row that the farm would write, and the farm with them, or null when no row is clean. */
export type FarmReading = { readonly rows: SheetRows<RowOf<"farm">>; readonly farm: Farm | null };

/** The decimal mark that the rows of a farm sheet give; null when none does. All sheets of an upload are read by it, this one too. */
export function markOfSheet({ rows }: SheetRows<RowOf<"farm">>): DecimalMark | null {
  const row = rows.find(({ record }) => record && columnKey(record.setting) === "decimal_mark");
  const value = row?.record?.value.trim().toLowerCase();
  return DECIMAL_MARKS.find((mark) => mark === value) ?? null;
}

/** Reads the rows of the farm sheet over the farm as it is. Values that do not go together are refused with their group. */
export function readFarmSettings(sheet: SheetRows<RowOf<"farm">>, current: Farm, mark: DecimalMark): FarmReading {
  const seen = new Map<string, Place>();
  const settings = linkRows(sheet, (row, say, { place }): SettingValue | null => {
    const setting = FARM_SETTINGS.find(({ heading }) => heading === columnKey(row.setting));
    if (!setting) {
      const names = FARM_SETTINGS.map(({ heading }) => heading);
      const guess = didYouMean(columnKey(row.setting), names) || `, or write one of ${names.join(", ")}`;
      say("setting", `no setting called "${row.setting}": take the row out${guess}`);
      return null;
    }
    const earlier = seen.get(setting.heading);
    if (earlier)
      say("setting", `${setting.heading} stands on ${placeInWords(earlier)} already: keep one of the two rows`);
    else seen.set(setting.heading, place);
    const { schema, absent } = setting.field;
    if (row.value.trim() === "" && absent !== undefined) return { setting, value: absent };
    if (row.value.trim() === "" && schema.safeParse(null).success) return { setting, value: null };
    if (row.value.trim() === "" && !schema.safeParse("").success) {
      say(
        "value",
        `${setting.heading} is empty: write ${setting.field.kind.hint}, or take the row out to keep the farm's value`,
      );
      return null;
    }
    const reading = readCell(setting.field, row.value, { decimalMark: mark });
    if (!reading.ok) say("value", reading.message);
    return reading.ok ? { setting, value: reading.value } : null;
  });
  const checked = refuseUnfit(settings, current);
  const merged = farmSchema.safeParse(withSettings(current, checked));
  return {
    rows: besideKept(checked, current),
    farm: merged.success && checked.rows.some(({ record }) => record) ? merged.data : null,
  };
}

/** Each setting as the farm would write it, beside what the farm has. */
function besideKept({ rows, problems }: SheetRows<SettingValue>, current: Farm): SheetRows<RowOf<"farm">> {
  const kept = new Map(settingRows(current).map((row) => [row.setting, { id: 0, key: "", row }]));
  return {
    problems,
    rows: rows.map((row) => ({
      ...row,
      kept: (row.record && kept.get(row.record.setting.heading)) ?? null,
      record: row.record && {
        setting: row.record.setting.heading,
        value: writeCell(row.record.setting.field, row.record.value, current.decimalMark),
      },
    })),
  };
}

function withSettings(current: Farm, { rows }: SheetRows<SettingValue>): unknown {
  const groups = {
    frost: { ...current.frost },
    climate: { ...climateColumns(current.climate) },
    statusWeights: { ...current.statusWeights },
    winter: { ...current.winter },
  };
  const farm: Record<string, unknown> = { ...current, ...groups };
  for (const { record } of rows) {
    if (!record) continue;
    const target: Record<string, unknown> = record.setting.group ? groups[record.setting.group] : farm;
    target[record.setting.name] = record.value;
  }
  return { ...farm, climate: climateOfColumns<unknown>(groups.climate) };
}

/** What a setting at the top goes together with: the days of an event with each other, any other with itself. */
const kindOf = (name: string): string => (Object.hasOwn(EVENT_DAYS_HABIT, name) ? "event days" : name);

/** Rows of a group whose values do not go together (frost dates, or event days, out of order) are not clean; each says why. */
function refuseUnfit(settings: SheetRows<SettingValue>, current: Farm): SheetRows<SettingValue> {
  const issues = farmSchema.safeParse(withSettings(current, settings)).error?.issues ?? [];
  const messages = new Map<unknown, string>(issues.map(({ path, message }) => [kindOf(String(path[0])), message]));
  return linkRows(settings, (record, say) => {
    const message = messages.get(record.setting.group ?? kindOf(record.setting.name));
    if (message) say("value", `${record.setting.heading} does not go with the others of its kind: ${message}`);
    return record;
  });
}
