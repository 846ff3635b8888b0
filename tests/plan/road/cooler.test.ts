import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, toDayNumber, yearOf } from "#lib/domain/day";
import { type CoolerMove, MOVE_KINDS } from "#lib/domain/records/cooler-move";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { type CoolerLot, isIn, storedLots } from "#lib/plan/road/cooler";
import { stemsCutUnrecorded } from "#lib/plan/road/cut-unrecorded";
import { coolerLead, couldServeInWords, entryInWords, lastUseInWords, sumInWords } from "#lib/plan/words/cooler-words";
import { booking, crop, day, focal, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anySeason, lived, on, sum } from "./lived-season";

/** Twelve stems cut in bed B1 on Tue 8 June for Client 1, five put in of the same day; Client 1's wedding of 12 is on Sat 12 June. */
const stored = (given: Partial<Snapshot> = {}): Snapshot =>
  snapshot({
    bookings: [booking({ id: 1, stemLines: focal(12) })],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-08"), stemCount: 5 }],
    cuts: [
      {
        ...{ id: 1, cutOn: day("2027-06-08"), bedId: 1, varietyId: 1, bookingId: 1 },
        ...{ stemsCut: 12, stemsAsked: null, goodStems: null, restStands: false },
      },
    ],
    ...given,
  });
/** A florist takes ten stems on Friday 11 June. */
const FLORIST: StandingOrder = {
  ...{ id: 1, buyer: "Florist", kind: "florist", weekday: 5, firstOn: day("2027-06-11"), lastOn: day("2027-06-11") },
  ...{ role: "focal", cropId: null, recipeId: null, colours: [], askedCount: 10, stemCents: 120 },
};
const move = (given: Partial<CoolerMove> = {}): CoolerMove => ({
  ...{ id: 1, movedOn: day("2027-06-10"), varietyId: 1, cutOn: day("2027-06-08") },
  ...{ kind: "taken out" as const, stemCount: 4, bookingId: 1 },
  ...given,
});
const lotsOn = (snap: Snapshot, today: string): CoolerLot[] =>
  storedLots({ ...on(snap, today), today: toDayNumber(day(today)) });
const claimsOf = ({ claims }: CoolerLot) => claims.map((part) => [part.booking.id, part.stems]);

describe("a lot of the cooler", () => {
  test("[ST2] holds what was cut and put in of a day together, until when it is of use, and for whom", () => {
    const [lot, ...others] = lotsOn(stored(), "2027-06-10");
    expect(others).toEqual([]);
    expect([lot.leftStems, toDay(lot.lastGoodDay), claimsOf(lot)]).toEqual([17, "2027-06-12", [[1, 12]]]);
    expect(lot.couldServe.map(({ id }) => id)).toEqual([1]);
    expect(sumInWords(lot)).toBe("17 in, 0 out: 17 stand there.");
    expect(lastUseInWords(lot, toDayNumber(day("2027-06-10")))).toBe("use by Sat 12 Jun");
    expect(coolerLead([lot], toDayNumber(day("2027-06-10")))).toBe(
      "17 stems in 1 lot. Use first: 17 Crop 1 Variety 1, use by Sat 12 Jun.",
    );
  });

  test("[ST2] holds less by what was taken out for its wedding, which then asks for less of it, and by what died", () => {
    const moves = [move(), move({ id: 2, kind: "thrown away", stemCount: 3, bookingId: null })];
    const [lot] = lotsOn(stored({ coolerMoves: moves }), "2027-06-10");
    expect([lot.leftStems, claimsOf(lot)]).toEqual([10, [[1, 8]]]);
    expect(lot.entries.map((entry) => entryInWords(entry, (id) => `Client ${id}`))).toEqual([
      "8 Jun: 5 put in",
      "8 Jun: 12 cut in B1",
      "10 Jun: 4 taken out for Client 1",
      "10 Jun: 3 thrown away",
    ]);
  });

  test("[ST2] counts what a passed event had of it as used where nobody recorded it, and is gone a fortnight after its days", () => {
    const [lot] = lotsOn(stored({ coolerMoves: [move()] }), "2027-06-14");
    expect([lot.leftStems, claimsOf(lot)]).toEqual([5, []]);
    expect(entryInWords(lot.entries[3], (id) => `Client ${id}`)).toBe(
      "12 Jun: 8 counted as used for Client 1, not recorded",
    );
    expect(lastUseInWords(lot, toDayNumber(day("2027-06-14")))).toBe("past its days since Sat 12 Jun");
    expect(lotsOn(stored(), "2027-06-26").length).toBe(1);
    expect(lotsOn(stored(), "2027-06-27")).toEqual([]);
  });

  test("[ST2] [N5] an enquiry has none of it and uses none: a florist’s ten are claimed, and what nobody took stands there", () => {
    const snap = stored({
      bookings: [booking({ id: 1, status: "enquiry", stemLines: focal(12) })],
      coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-08"), stemCount: 12 }],
      ...{ cuts: [], plantings: [], standingOrders: [FLORIST] },
    });
    const [lot] = lotsOn(snap, "2027-06-09");
    expect([lot.leftStems, claimsOf(lot).map(([, stems]) => stems)]).toEqual([12, [10]]);
    expect(lot.couldServe.map(({ id }) => id)).toEqual([1]);
    const [after] = lotsOn({ ...snap, standingOrders: [] }, "2027-06-14");
    expect([after.leftStems, after.entries.map(({ kind }) => kind)]).toEqual([12, ["put in"]]);
  });

  test("says what it could serve, or why nothing", () => {
    const other = stored({ bookings: [booking({ id: 1, stemLines: focal(12), unacceptableColours: ["cream"] })] });
    const [spare] = lotsOn(other, "2027-06-10");
    expect(couldServeInWords(spare, 2)).toBe("No event that it keeps for asks for it.");
    const brief = stored({ crops: [crop({ id: 1, holdDays: { ...crop({ id: 1 }).holdDays, count: 1 } })] });
    expect(couldServeInWords(lotsOn(brief, "2027-06-09")[0], 2)).toBe(
      "It does not keep until an event: none can have it.",
    );
    expect(couldServeInWords(lotsOn(stored(), "2027-06-10")[0], 2)).toBe("Could serve Client 1, Sat 12 Jun.");
    expect(coolerLead([], 0)).toBe("The cooler is empty.");
  });

  test("of stems cut as planned and not recorded none stand in a lot; they are told apart", () => {
    const unwritten = {
      ...on(stored({ cuts: [], coolerStock: [] }), "2027-06-10"),
      today: toDayNumber(day("2027-06-10")),
    };
    expect(storedLots(unwritten)).toEqual([]);
    // Ten open on Thursday, which is today; the other two were to be cut on Wednesday.
    expect(stemsCutUnrecorded(unwritten.work.match, unwritten.today)).toBe(2);
  });

  test("[ST2] adds up, in whatever order and by whomever moves were recorded: what came in less what left, never below none", () => {
    let lotsWithMoves = 0;
    fc.assert(
      fc.property(anySeason, fc.nat(), ({ snap, seed, dayCount }, moveSeed) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const moves = anyMoves(moveSeed, { ...snap, cuts }, today);
        const farm = { ...snap, cuts, coolerMoves: moves };
        const lots = storedLots({ ...on(farm, today), today });
        const mixed = { ...farm, coolerMoves: [...moves].reverse() };
        const again = storedLots({ ...on(mixed, today), today });
        const said = (lot: CoolerLot) => [lot.variety.id, lot.cutDay, lot.leftStems, claimsOf(lot)];
        expect(again.map(said)).toEqual(lots.map(said));
        for (const lot of lots) {
          const came = sum(lot.entries.filter(isIn).map(({ stems }) => stems));
          const left = sum(lot.entries.filter((entry) => !isIn(entry)).map(({ stems }) => stems));
          expect(lot.leftStems).toBe(Math.max(0, came - left));
          if (left > 0) lotsWithMoves++;
          expect(sum(lot.claims.map(({ stems }) => stems))).toBeLessThanOrEqual(lot.leftStems);
        }
      }),
      { ...anySeed, numRuns: 40 },
    );
    expect(lotsWithMoves).toBeGreaterThan(10);
  });
});

/** Moves of what was cut, each of no more than the lot holds. */
function anyMoves(seed: number, { cuts, bookings }: Snapshot, today: number): CoolerMove[] {
  const random = seededRandom(seed);
  const kept = new Map<string, number>();
  for (const { varietyId, cutOn } of cuts) kept.set(`${varietyId} ${cutOn}`, 0);
  for (const row of cuts) {
    const key = `${row.varietyId} ${row.cutOn}`;
    kept.set(key, (kept.get(key) ?? 0) + Math.floor(row.stemsCut / 3));
  }
  return [...kept].flatMap(([key, most], index) => {
    const [varietyId, cutOn] = key.split(" ");
    if (most === 0 || yearOf(day(cutOn)) !== 2027) return [];
    const bookingId = wholeBetween(random, 0, bookings.length);
    return {
      id: index + 1,
      movedOn: toDay(Math.min(today, toDayNumber(day(cutOn)) + wholeBetween(random, 0, 3))),
      varietyId: Number(varietyId),
      cutOn: day(cutOn),
      kind: MOVE_KINDS[wholeBetween(random, 0, 1)],
      stemCount: wholeBetween(random, 1, most),
      bookingId: bookings[bookingId]?.id ?? null,
    };
  });
}
