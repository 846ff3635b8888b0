import type { Fields } from "#lib/domain/records/field";
import { columnsOf } from "#lib/domain/records/sheets";

/** A header as it is compared: letter case makes no difference, a space, hyphen or underscore are alike, and colour is spelled either way. */
export const columnKey = (header: string): string =>
  header
    .trim()
    .toLowerCase()
    .replace(/[(),]/g, " ")
    .trim()
    .replace(/[\s_-]+/g, "_")
    .replace(/(^|_)color/g, "$1colour");

/** What a grower's own spreadsheets call our columns; all `common practice`. The first that a sheet has, and that stands for nothing else, is taken. */
const HEADING_WORDS: Readonly<Record<string, readonly string[]>> = {
  bed: ["bed_name", "plot"],
  client: ["customer", "couple", "client_name"],
  event_on: ["event_date", "wedding_date", "date", "day"],
  recipe: ["piece", "item", "arrangement"],
  count: ["qty", "quantity", "how_many", "number"],
  stems: ["stem_count", "qty", "quantity", "how_many"],
  plants: ["plant_count", "number_of_plants", "qty", "quantity"],
  planted_on: ["planted", "date_planted", "planting_date", "sown_on", "sowing_date"],
  cut_on: ["cut", "date_cut", "date"],
  palette: ["colours", "colour"],
  colours: ["colour", "palette"],
  season: ["year"],
  variety: ["cultivar"],
  note: ["notes", "comment", "comments"],
};

const LENGTH_WORDS = "ft|feet|foot|in|inches|cm|yd|yards|metres|meters";

/** The column that a heading means, or null; and the unit of its bare numbers, where the heading names another than ours. */
export type HeadingMeant = { readonly heading: string | null; readonly unit: string | null };

/** What each heading of a sheet's file means for these fields. Our own names go before others' words, and no word takes a column that is there. */
export function headingsMeant(fields: Fields, header: readonly string[]): HeadingMeant[] {
  const known = columnsOf(fields).map(({ heading }) => heading);
  const keys = header.map(columnKey);
  const taken = new Set(keys.filter((key) => known.includes(key)));
  return keys.map((key): HeadingMeant => {
    if (known.includes(key)) return { heading: key, unit: null };
    const withUnit = inUnit(key, known);
    const word = known.find((heading) => HEADING_WORDS[heading]?.includes(key) && !taken.has(heading));
    const heading = withUnit?.heading ?? word ?? null;
    if (heading === null || taken.has(heading)) return { heading: null, unit: null };
    taken.add(heading);
    return { heading, unit: withUnit?.unit ?? null };
  });
}

/** "length_ft" for "length_m", "spare_%" for "spare_share". */
function inUnit(key: string, known: readonly string[]): { readonly heading: string; readonly unit: string } | null {
  const [, base, unit] = new RegExp(`^(.+)_(${LENGTH_WORDS}|%|percent)$`).exec(key) ?? [];
  if (!base || !unit) return null;
  const heading = /%|percent/.test(unit) ? `${base}_share` : `${base}_m`;
  return known.includes(heading) ? { heading, unit } : null;
}

/** A cell of a column whose heading names a unit: a bare number is in that unit. */
export const inUnitOf = (cell: string, unit: string | null): string =>
  unit !== null && /^\s*[+-]?[\d.,]+\s*$/.test(cell) ? `${cell.trim()} ${unit}` : cell;

/** What a heading could mean that lacks its unit: "length" is metres or feet. */
export const unitAsked = (key: string, fields: Fields): string | null => {
  const lacks = columnsOf(fields).find(({ heading, field }) => field.measure === "length" && heading === `${key}_m`);
  return lacks ? `may be in metres or in feet: name it ${key}_m or ${key}_ft` : null;
};
