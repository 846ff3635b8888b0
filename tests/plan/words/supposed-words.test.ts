import { expect, test } from "vitest";
import { monthDaySchema } from "#lib/domain/day-schema";
import type { Change } from "#lib/domain/what-if";
import type { PlanTotals } from "#lib/plan/what-if/comparison";
import { adoptInWords, differenceInWords, differenceTitle, frostOddsInWords } from "#lib/plan/words/supposed-words";
import { booking, snapshot } from "../../small-farm";

const farm = snapshot({ bookings: [booking({ id: 1, client: "A. Invented" })] });
const kept = (count: number): Change[] =>
  Array.from({ length: count }, (_, bed) => ({ kind: "bed-kept", bedId: bed + 1 }));
const frost: Change = { kind: "frost-moved", firstFrost: monthDaySchema.parse("10-04") };
const title = (...rows: [Change[], number][]) =>
  differenceTitle(
    rows.map(([changes, stems]) => ({ whatIf: { name: "Try this", changes }, stems })),
    farm,
  );

test("the title says what each supposes and what it wins back or takes", () => {
  expect(title([kept(6), -508], [[frost], 277])).toBe(
    "Six beds kept win back 508 stems; a frost on 4 October takes 277",
  );
  expect(title([kept(1), -1])).toBe("One bed kept wins back 1 stem");
  expect(title([[{ kind: "season-shifted", days: -10, cropId: null }], 0])).toBe(
    "A season 10 days early changes nothing that is short",
  );
  expect(title([[{ kind: "booking-dropped", bookingId: 1 }], -40])).toBe("Losing A. Invented wins back 40 stems");
});

test("what is supposed of several kinds, or of rows that are gone, goes by its name", () => {
  expect(title([[...kept(2), frost], 5])).toBe("“Try this” takes 5 stems");
  expect(title([[{ kind: "booking-dropped", bookingId: 9 }], 5])).toBe("“Try this” takes 5 stems");
  expect(title([[], 0])).toBe("“Try this” changes nothing that is short");
});

test("the button says what will be so: these beds, the day reckoned with, or all that is supposed", () => {
  expect(adoptInWords(kept(1))).toBe("Adopt this bed");
  expect(adoptInWords(kept(6))).toBe("Adopt these six");
  expect(adoptInWords([frost])).toBe("Reckon with 4 October");
  expect(adoptInWords([frost, ...kept(1)])).toBe("Adopt this what-if");
});

const NONE: PlanTotals = {
  shortStems: 0,
  focalShortStems: 0,
  buyInCents: 0,
  winter: null,
  bookingCount: 0,
  coveredBookingCount: 0,
};

test("the sentence names stems, money to buy in and the winter's whole money, and only what changes", () => {
  const winter = { labourCents: -96_700, materialCents: -13_200, replacementCents: 20_000, freeBedCents: 0 };
  const all = { ...NONE, shortStems: -508, buyInCents: -217_000, coveredBookingCount: 2, winter };
  expect(differenceInWords(all, 10)).toBe(
    "508 fewer stems short in ten weeks, $2,170 less to buy in, a winter $899 cheaper and 2 bookings more in full.",
  );
  expect(differenceInWords({ ...NONE, shortStems: 1, buyInCents: 49 }, 1)).toBe("1 more stem short in one week.");
  expect(differenceInWords(NONE, 0)).toBe("No week is short of more stems or fewer.");
  expect(differenceInWords(NONE, 2)).toBe("As many stems short in all, otherwise shared in two weeks.");
});

test("a supposed frost stands beside the farm's own dates", () => {
  expect(frostOddsInWords(kept(1), farm)).toBeNull();
  const later: Change = { kind: "frost-moved", firstFrost: monthDaySchema.parse("10-09") };
  expect(frostOddsInWords([later], farm)).toMatch(/^You reckon with \d+ \w+; one year in ten has its first frost by/);
  const early: Change = { kind: "frost-moved", firstFrost: farm.farm.frost.firstAutumnP10 };
  expect(frostOddsInWords([early], farm)).toMatch(/^One year in ten has its first frost by/);
});
