import { groupsOf } from "#lib/domain/groups-of";
import type { Fields, RecordOf } from "#lib/domain/records/field";
import { columnsOf } from "#lib/domain/records/sheets";
import { cellsOf } from "./columns";
import { KEY_HEADING, type KeptRow } from "./known-farm";
import { isKey } from "./row-key";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRow, type SheetRows } from "./sheet-rows";

/** The farm's rows of a sheet, and what tells a row from others beside its key. */
type OnFarm<Row> = {
  readonly kept: readonly KeptRow<Row>[];
  readonly identityOf: (row: Row) => string;
  /**
   * "one": no two rows of the farm have one identity. "several": they may, and like rows are told apart by all they say. "lines": the
   * rows of one identity are the lines of one record, and share its key.
   */
  readonly held: "one" | "several" | "lines";
};

/**
 * Finds the row of the farm that each row of a sheet stands for: by its key, else by what it is known by. Columns that the sheet lacks keep
 * what the farm has. A row that stands for none is new. Which of several like rows is meant is never guessed: then the key is asked for.
 */
export function matchRows<F extends Fields>(
  fields: F,
  sheet: SheetRows<RecordOf<F>>,
  onFarm: OnFarm<RecordOf<F>>,
): SheetRows<RecordOf<F>> {
  const found = new Map<SheetRow<RecordOf<F>>, KeptRow<RecordOf<F>>>();
  const wrong = matchByKey(sheet.rows, onFarm, found);
  if (onFarm.held === "several") matchLike(fields, sheet.rows, onFarm, found, wrong);
  else matchByIdentity(sheet.rows, onFarm, found);
  const rows = sheet.rows.map((row): SheetRow<RecordOf<F>> => {
    const kept = found.get(row) ?? null;
    const message = wrong.get(row);
    return {
      ...row,
      kept,
      record: row.record && kept && !message ? withAbsent(fields, row, row.record, kept.row) : row.record,
    };
  });
  const messages = new Map(sheet.rows.map((row, index) => [rows[index], wrong.get(row)]));
  return linkRows({ ...sheet, rows }, (record, say, row) => {
    const message = messages.get(row);
    if (message) say(KEY_HEADING, message);
    return record;
  });
}

type Found<Row> = Map<SheetRow<Row>, KeptRow<Row>>;

/** Rows that have a key; gives what is wrong with those that have a bad one. A key that the farm does not have says nothing. */
function matchByKey<Row>(rows: readonly SheetRow<Row>[], { kept, held }: OnFarm<Row>, found: Found<Row>) {
  const wrong = new Map<SheetRow<Row>, string>();
  const byKey = groupsOf(kept, (one) => one.key);
  const takenBy = new Map<string, Place[]>();
  for (const row of rows) {
    const key = row.textIn(KEY_HEADING).trim().toLowerCase();
    if (key === "") continue;
    if (!isKey(key)) {
      wrong.set(
        row,
        `"${key.slice(0, 40)}" is no key of a farm's sheet: keep it as it came out, or empty it for a new row`,
      );
      continue;
    }
    const ofKey = byKey.get(key);
    if (!ofKey) continue;
    const taken = takenBy.get(key) ?? [];
    takenBy.set(key, taken);
    if (held !== "lines" && taken.length > 0)
      wrong.set(
        row,
        `this key stands on ${placeInWords(taken[0])} already: keep it in one of the two rows and empty it in the new one`,
      );
    else {
      found.set(row, ofKey[Math.min(taken.length, ofKey.length - 1)]);
      taken.push(row.place);
    }
  }
  return wrong;
}

function matchByIdentity<Row>(
  rows: readonly SheetRow<Row>[],
  { kept, identityOf, held }: OnFarm<Row>,
  found: Found<Row>,
): void {
  const byIdentity = groupsOf(kept, ({ row }) => identityOf(row));
  const taken = new Set(held === "one" ? found.values() : []);
  const met = new Map<string, number>();
  for (const row of rows) {
    if (row.record === null || found.has(row)) continue;
    const identity = identityOf(row.record);
    const like = byIdentity.get(identity) ?? [];
    const count = met.get(identity) ?? 0;
    met.set(identity, count + 1);
    const one = like[Math.min(count, like.length - 1)];
    if (one && !taken.has(one)) found.set(row, one);
  }
}

/** Like rows: first those that say the very same, then one that is left of each side; more than that is no match but a question. */
function matchLike<F extends Fields>(
  fields: F,
  rows: readonly SheetRow<RecordOf<F>>[],
  { kept, identityOf }: OnFarm<RecordOf<F>>,
  found: Found<RecordOf<F>>,
  wrong: Map<SheetRow<RecordOf<F>>, string>,
): void {
  const taken = new Set(found.values());
  const free = groupsOf(
    kept.filter((one) => !taken.has(one)),
    ({ row }) => identityOf(row),
  );
  const asked = groupsOf(
    rows.filter((row) => row.record !== null && !found.has(row) && !wrong.has(row)),
    ({ record }) => (record === null ? "" : identityOf(record)),
  );
  const columns = columnsOf(fields);
  for (const [identity, ofFile] of asked) {
    const ofFarm = free.get(identity) ?? [];
    const has = columns.map(({ heading }) => ofFile[0].has(heading));
    const said = (row: RecordOf<F>) => JSON.stringify(cellsOf(fields, row).filter((_, index) => has[index]));
    const same = groupsOf(ofFarm, ({ row }) => said(row));
    const left = ofFile.filter((row) => {
      const one = row.record && same.get(said(row.record))?.shift();
      if (one) found.set(row, one);
      return !one;
    });
    const leftOnFarm = [...same.values()].flat();
    if (left.length === 1 && leftOnFarm.length === 1) found.set(left[0], leftOnFarm[0]);
    else if (leftOnFarm.length > 0)
      for (const row of left)
        wrong.set(
          row,
          `the farm has ${leftOnFarm.length} rows that this could be: put the key of one (${leftOnFarm
            .slice(0, MOST_KEYS_TOLD)
            .map(({ key }) => key)
            .join(", ")}) here, or take the row out`,
        );
  }
}

const MOST_KEYS_TOLD = 4;

/** What the sheet has no column for stays as the farm has it; the origin of a number only while the number stays too. */
function withAbsent<F extends Fields>(
  fields: F,
  { has }: SheetRow<unknown>,
  record: RecordOf<F>,
  kept: RecordOf<F>,
): RecordOf<F> {
  const filled: Record<string, unknown> = { ...record };
  const keptValues: Record<string, unknown> = kept;
  for (const { heading, name, part } of columnsOf(fields)) {
    if (has(heading)) continue;
    if (part === null) filled[name] = keptValues[name];
    else if (part === "origin" && countIn(filled[name]) === countIn(keptValues[name])) filled[name] = keptValues[name];
  }
  return filled as RecordOf<F>;
}

const countIn = (value: unknown): unknown =>
  typeof value === "object" && value !== null && "count" in value ? value.count : undefined;
