import type { BookingRecord, PieceRecord, StemLineRecord } from "#lib/domain/farm-records";
import { Guesses, nameKey } from "#lib/domain/nearest-name";
import type { KnownNames } from "./known-names";
import type { NameBook } from "./name-book";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type Say, type SheetRow, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

export type BookingSheets = {
  readonly bookings: SheetRows<RowOf<"bookings">>;
  readonly pieces: SheetRows<RowOf<"pieces">>;
  readonly stems: SheetRows<RowOf<"stems">>;
};

/** `records` are the clean bookings with their lines; the rows tell which line of which sheet is clean. */
export type LinkedBookings = {
  readonly records: readonly BookingRecord[];
  readonly bookings: SheetRows<BookingRecord>;
  readonly pieces: SheetRows<PieceRecord>;
  readonly stems: SheetRows<StemLineRecord>;
};

type Names = { readonly crops: NameBook; readonly recipes: NameBook; readonly known: KnownNames };

const keyOf = (client: string, eventOn: string) => `${nameKey(client)}\n${eventOn.trim()}`;
const keyOfRow = ({ textIn }: SheetRow<unknown>) => keyOf(textIn("client"), textIn("event_on"));

/**
 * Bookings with the pieces and stems of the same upload. A booking is known by client and day, stands once, and is not on the farm
 * yet. One with a wrong line is left out whole, since half a promise is worse than none; its rows say so.
 */
export function linkBookings(sheets: BookingSheets, { crops, recipes, known }: Names): LinkedBookings {
  const onFarm = new Set(known.bookings.map(({ client, eventOn }) => keyOf(client, eventOn)));
  const seen = new Map<string, Place>();
  const bookings = linkRows(sheets.bookings, (draft, say, row) => {
    const key = keyOfRow(row);
    const earlier = seen.get(key);
    if (onFarm.has(key))
      say(
        "client",
        `the booking of "${draft.client}" on ${draft.eventOn} is on the farm already: take the row out, or change the booking on its own page`,
      );
    else if (earlier)
      say(
        "client",
        `the booking of "${draft.client}" on ${draft.eventOn} stands on ${placeInWords(earlier)} already: keep one of the two rows`,
      );
    else seen.set(key, row.place);
    const unacceptableCrops = draft.unacceptableCrops.map((name) => cropName(name, "not_wanted", crops, say) ?? name);
    return {
      ...draft,
      spareShare: draft.spareShare ?? known.farm.spareShare,
      unacceptableCrops,
      pieces: [],
      stemLines: [],
    };
  });
  const owner = ownerOf(bookings.rows, onFarm);
  const pieces = linkRows(sheets.pieces, ({ client: _, eventOn: __, ...line }, say, row) => {
    owner(row, say);
    const recipe = recipes.find(line.recipe);
    if (!recipe.ok) say("recipe", recipe.message);
    return recipe.ok ? { ...line, recipe: recipe.name } : null;
  });
  const stems = linkRows(sheets.stems, ({ client: _, eventOn: __, ...line }, say, row) => {
    owner(row, say);
    const crop = line.crop === null ? null : cropName(line.crop, "crop", crops, say);
    return { ...line, crop };
  });
  return withoutHalves({ bookings, pieces, stems });
}

function cropName(name: string, column: string, crops: NameBook, say: Say): string | null {
  const crop = crops.find(name);
  if (!crop.ok) say(column, crop.message);
  return crop.ok ? crop.name : null;
}

/** Says when the booking of a line is not in the upload, or wrong by itself. */
function ownerOf(rows: readonly SheetRow<BookingRecord>[], onFarm: ReadonlySet<string>) {
  const owners = new Map<string, SheetRow<BookingRecord>>();
  for (const row of rows) if (!owners.has(keyOfRow(row)) || row.record) owners.set(keyOfRow(row), row);
  const daysOf = new Map<string, string[]>();
  for (const { textIn } of rows) {
    const client = textIn("client").trim();
    const days = daysOf.get(client);
    if (days) days.push(textIn("event_on").trim());
    else daysOf.set(client, [textIn("event_on").trim()]);
  }
  const clients = [...daysOf.keys()];
  const guesses = new Guesses();
  const guess = (client: string, eventOn: string) => {
    const near = guesses.nearest(client, () => clients);
    const days = near === undefined ? [] : (daysOf.get(near) ?? []);
    return near === undefined ? "" : `; did you mean "${near}" on ${guesses.nearest(eventOn, () => days) ?? days[0]}?`;
  };
  return ({ textIn, ...row }: SheetRow<unknown>, say: Say): void => {
    const client = textIn("client").trim();
    const eventOn = textIn("event_on").trim();
    const found = owners.get(keyOfRow({ textIn, ...row }));
    if (found?.record) return;
    if (onFarm.has(keyOf(client, eventOn)))
      say(
        "client",
        `the booking of "${client}" on ${eventOn} is on the farm already: sheets add lines to new bookings only, so change it on its own page and take this row out`,
      );
    else if (found)
      say(
        "client",
        `the booking of "${client}" on ${eventOn} is on ${placeInWords(found.place)}, which has a problem: mend that row first`,
      );
    else
      say(
        "client",
        `no booking of "${client}" on ${eventOn}: add it to the bookings sheet, or mend the client or the day${guess(client, eventOn)}`,
      );
  };
}

type Linked = Omit<LinkedBookings, "records">;

/** Leaves out every booking with a wrong line, and the other lines of it, each with a word why. */
function withoutHalves({ bookings, pieces, stems }: Linked): LinkedBookings {
  const wrongLines = new Map<string, Place>();
  for (const row of [...pieces.rows, ...stems.rows])
    if (row.record === null && !wrongLines.has(keyOfRow(row))) wrongLines.set(keyOfRow(row), row.place);
  const whole = <T>(sheet: SheetRows<T>): SheetRows<T> =>
    linkRows(sheet, (record, say, row) => {
      const wrong = wrongLines.get(keyOfRow(row));
      if (wrong)
        say(
          null,
          `left out, since a line of the booking of "${row.textIn("client").trim()}" has a problem: mend ${placeInWords(wrong)} first`,
        );
      return record;
    });
  const linked = { bookings: whole(bookings), pieces: whole(pieces), stems: whole(stems) };
  const linesOf = <T>({ rows }: SheetRows<T>) => {
    const lines = new Map<string, T[]>();
    for (const row of rows)
      if (row.record !== null) {
        const of = lines.get(keyOfRow(row));
        if (of) of.push(row.record);
        else lines.set(keyOfRow(row), [row.record]);
      }
    return lines;
  };
  const piecesOf = linesOf(linked.pieces);
  const stemsOf = linesOf(linked.stems);
  const records = linked.bookings.rows.flatMap((row) => {
    if (row.record === null) return [];
    return [{ ...row.record, pieces: piecesOf.get(keyOfRow(row)) ?? [], stemLines: stemsOf.get(keyOfRow(row)) ?? [] }];
  });
  return { ...linked, records };
}
