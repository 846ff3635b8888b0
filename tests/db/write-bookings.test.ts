import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { addBooking, removeBooking, setBookingStatus, updateBooking } from "#db/write/bookings";
import { putRecipe } from "#db/write/recipes";
import { importRecords } from "#db/write/records";
import type { BookingDraft } from "#lib/domain/records/booking";
import { booking, day, focal, recipe } from "../small-farm";
import { changeOf, done, kept, refused, withFarm } from "./kept-farm";

const RICH: BookingDraft = {
  client: 'O\'Hara & "Ben" 🌸',
  status: "enquiry",
  lapsesAfter: day("2027-12-31"),
  eventOn: day("2028-02-29"),
  palette: ["blush", "cream", "blush"],
  alternativeColours: ["peach", "apricot"],
  unacceptableColours: ["white", "silver"],
  spareShare: 0.125,
  ...{ leadDays: 4, designDays: 2, deliverDays: null },
  takenOn: day("2027-11-03"),
  priceCents: 148_000,
  finalDueOn: day("2028-01-15"),
  finalOn: day("2028-01-20"),
  finalPieces: [
    { count: 1.5, what: "Arch" },
    { count: 12, what: "Piece 1" },
  ],
  finalStems: 96,
  askedBefore: [{ until: day("2028-01-22"), role: "focal", stems: 80 }],
  unacceptableCropIds: [2, 1, 2],
  pieces: [
    { recipeId: 2, pieceCount: 1.5, colours: ["white"] },
    { recipeId: 1, pieceCount: 12, colours: [] },
    { recipeId: 2, pieceCount: 1, colours: ["plum", "cream"] },
  ],
  stemLines: [
    { role: "line", cropId: null, cropOnly: false, asks: [], colours: [], stemCount: 7.25 },
    { role: "focal", cropId: 1, cropOnly: true, asks: [], colours: ["red", "coral"], stemCount: 40 },
  ],
  promises: [
    { role: "focal", cropId: 1, cropOnly: true, asks: [], colours: ["red", "coral"], stemCount: 38 },
    { role: "line", cropId: null, cropOnly: false, asks: [], colours: [], stemCount: 9 },
  ],
  note: "Two lines\nof a note; DROP TABLE booking",
};

test("an added booking comes back as it was given, every line in its order", () => {
  withFarm((database) => {
    const { result: id, title } = done(addBooking(database, RICH));
    expect(kept(database).bookings.at(-1)).toEqual({ id, ...RICH });
    expect(title).toBe('added the booking of O\'Hara & "Ben" 🌸, Tuesday 29 February 2028');
  });
});

test("more stems than a plan can reckon with are refused: in a booking, by a recipe of bookings that stand, and by an undo", () => {
  withFarm((database) => {
    const pieces = [{ recipeId: 2, pieceCount: 100_000, colours: [] }];
    const { result: id } = done(addBooking(database, { ...RICH, pieces, stemLines: [] }));
    const arch = (stemsPerPiece: number) =>
      putRecipe(database, {
        ...recipe({ id: 2, lines: [{ role: "foliage", stemsPerPiece, asks: [], colours: "any" }] }),
        name: "Arch",
      });
    const before = kept(database);
    expect(refused(arch(10_000))[0]).toMatch(/asks for 1,125,000,000 stems, and a booking has at most 1,000,000/);
    expect(
      refused(updateBooking(database, id, { ...RICH, pieces: [...pieces, ...pieces], spareShare: 1 })),
    ).toHaveLength(1);
    expect(kept(database)).toEqual(before);
    const removal = removeBooking(database, id);
    done(arch(10_000));
    const undone = undoChange(database, changeOf(removal));
    expect(undone).toMatchObject({ ok: false, message: expect.stringMatching(/1,000,000/) });
    expect(kept(database).bookings.some((kept) => kept.id === id)).toBe(false);
  });
});

test("a changed booking is what it was changed to: lines added, dropped and turned round", () => {
  withFarm((database) => {
    const others = kept(database).bookings.filter(({ id }) => id !== 1);
    const turned = {
      ...RICH,
      unacceptableCropIds: [1],
      pieces: [...RICH.pieces, ...RICH.pieces].reverse(),
      stemLines: [],
    };
    for (const draft of [RICH, turned, RICH, booking({ id: 0 })]) {
      const { id: _, ...asked }: BookingDraft & { id?: number } = draft;
      done(updateBooking(database, 1, draft));
      expect(kept(database).bookings).toEqual([{ id: 1, ...asked }, ...others]);
    }
  });
});

test("saving a booking without a change is no change", () => {
  withFarm((database) => {
    const { result: id } = done(addBooking(database, RICH));
    expect(done(updateBooking(database, id, RICH)).changeId).toBeNull();
  });
});

test("a booking keeps its other lines when a crop its client does not want leaves the farm, and can be saved again", () => {
  withFarm((database) => {
    done(updateBooking(database, 1, { ...RICH, unacceptableCropIds: [2, 1, 2, 1] }));
    database.$client.exec("DELETE FROM crop WHERE id = 2");
    expect(kept(database).bookings[0].unacceptableCropIds).toEqual([1, 1]);
    done(updateBooking(database, 1, { ...RICH, unacceptableCropIds: [1, 1, 1] }));
    expect(kept(database).bookings[0].unacceptableCropIds).toEqual([1, 1, 1]);
  });
});

test("a status is set, which ends what was promised, and a booking removed, with nothing else touched", () => {
  withFarm((database) => {
    const [first, second] = kept(database).bookings;
    done(setBookingStatus(database, 1, "cancelled"));
    expect(kept(database).bookings).toEqual([{ ...first, status: "cancelled", promises: [] }, second]);
    done(setBookingStatus(database, 1, "enquiry", { takenOn: day("2027-06-02") }));
    expect(kept(database).bookings[0]).toEqual({ ...first, status: "enquiry", promises: [], takenOn: "2027-06-02" });
    done(removeBooking(database, 1));
    expect(kept(database).bookings).toEqual([second]);
  });
});

test("a client has one booking a day; on another day, one more", () => {
  withFarm((database) => {
    const before = kept(database);
    const why = [
      "client: a booking of Client 2 for Saturday 12 June 2027 is there already: change that one, or write another name",
    ];
    expect(refused(addBooking(database, booking({ id: 0, client: "Client 2" })))).toEqual(why);
    expect(refused(updateBooking(database, 1, booking({ id: 1, client: "Client 2" })))).toEqual(why);
    expect(kept(database)).toEqual(before);
    changeOf(addBooking(database, booking({ id: 0, client: "Client 2", eventOn: day("2027-06-13") })));
  });
});

test("recipes and crops that are not on the farm are all named, and nothing is written", () => {
  withFarm((database) => {
    const before = kept(database);
    const draft = booking({
      id: 0,
      client: "New",
      pieces: [
        { recipeId: 1, pieceCount: 1, colours: [] },
        { recipeId: 98, pieceCount: 1, colours: [] },
      ],
      stemLines: focal(3, { cropId: 97 }),
      unacceptableCropIds: [1, 96],
    });
    const why = [
      "pieces[1].recipeId: this recipe is not on the farm",
      "stemLines[0].cropId: this crop is not on the farm",
      "unacceptableCropIds[1]: this crop is not on the farm",
    ];
    expect(refused(addBooking(database, draft))).toEqual(why);
    expect(refused(updateBooking(database, 1, draft))).toEqual(why);
    expect(kept(database)).toEqual(before);
  });
});

test("a booking that is not there is neither changed nor removed", () => {
  withFarm((database) => {
    const why = ["id: this booking is not on the farm"];
    expect(refused(updateBooking(database, 99, RICH))).toEqual(why);
    expect(refused(setBookingStatus(database, 99, "held"))).toEqual(why);
    expect(refused(removeBooking(database, 99))).toEqual(why);
  });
});

test("what an import promises is written with it, as one change that is undone as one", () => {
  withFarm((database) => {
    const before = kept(database);
    const { id: _, unacceptableCropIds: __, ...plain } = booking({ id: 1, client: "From a sheet" });
    const record = { ...plain, unacceptableCrops: [], pieces: [], stemLines: [], promises: [] };
    const promised = importRecords(database, { bookings: [record] }, ({ bookings }) => {
      const added = bookings.find(({ client }) => client === "From a sheet");
      return added ? [{ bookingId: added.id, promises: focal(7) }] : [];
    });
    done(promised);
    expect(kept(database).bookings.find(({ client }) => client === "From a sheet")?.promises).toEqual(focal(7));
    expect(undoChange(database, changeOf(promised))).toMatchObject({ ok: true });
    expect(kept(database)).toEqual(before);
  });
});
