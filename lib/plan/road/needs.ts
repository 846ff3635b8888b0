import { stemsAskedFor, tooManyStems } from "#lib/domain/booking-stems";
import { toDay, toDayNumber, yearOf } from "#lib/domain/day";
import { type EventHabit, eventDaysOf, isWorn } from "#lib/domain/event-days";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Recipe } from "#lib/domain/records/recipe";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { type Colour, type LineColours, NEUTRALS, ROLES, type Role, STEM_ASKS, type StemAsk } from "#lib/domain/words";
import { asksForStems } from "./lapsed";
import { promisedStems } from "./promises";

/**
 * What one booking asks for: so many stems of a role in acceptable colours, best colour first; an empty list takes any.
 * A named crop is preferred, or with `cropOnly` the only one. `stems` is whole and has the spare in it.
 */
export type Need = {
  readonly booking: Booking;
  readonly eventDay: number;
  /** The last day on which a stem for it may be cut, as days before the event [M12]. */
  readonly leadDays: number;
  readonly role: Role;
  readonly cropId: number | null;
  readonly cropOnly: boolean;
  /** What it asks of the stem, in the order of `STEM_ASKS`, none twice. */
  readonly asks: readonly StemAsk[];
  readonly colours: readonly Colour[];
  /** Needs of one kind ask for the same stems: role, crop, what is asked of the stem, colours and what is unacceptable are alike. */
  readonly kind: string;
  readonly stemsWithoutSpare: number;
  readonly stems: number;
  /** Of these, the stems that were promised [M9]; a promise is of no more than the need asks for. */
  readonly promisedStems: number;
};

/**
 * Every need of a season, or of several together, in the order in which equal claims are served [M7]: by event day, then by booking, the first taken first, then roles in theirs. Cancelled bookings ask for nothing [N3], and on a day neither do those that have lapsed [N4].
 * @param before  needs made of the same recipes and settings before a change: those of bookings that are still the same objects are taken from it
 * @param today   the day it is asked on, as a day number; null where no day has passed
 */
export function needs(
  snapshot: Snapshot,
  seasonYears: number | readonly number[],
  before: readonly Need[] = [],
  today: number | null = null,
): Need[] {
  const seasons = [seasonYears].flat();
  const known = new Map<Booking, Need[]>();
  for (const need of before) {
    const ofBooking = known.get(need.booking);
    if (ofBooking) ofBooking.push(need);
    else known.set(need.booking, [need]);
  }
  const recipes = new ById("recipe", snapshot.recipes);
  const on = today === null ? null : toDay(today);
  return snapshot.bookings
    .filter((booking) => asksForStems(booking, on) && seasons.includes(yearOf(booking.eventOn)))
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.id - b.id))
    .flatMap((booking) => known.get(booking) ?? needsOf(booking, recipes, snapshot.farm));
}

/** What one booking asks for, whenever it is cut and whatever of it was promised. */
export type AskedStems = Omit<Need, "booking" | "eventDay" | "leadDays" | "promisedStems">;

/**
 * What one booking asks for: lines alike in role, crop and colours are added up, spare is added, and the sum is rounded up
 * once per need, never per piece [N1] [N2].
 * @throws RangeError if they are more stems than a booking may have
 */
export function askedBy(booking: Booking, recipes: Pick<ById<Recipe>, "get">): AskedStems[] {
  const refused = tooManyStems(stemsAskedFor(booking, (id) => recipes.get(id).lines));
  if (refused) throw new RangeError(`booking ${booking.id} ${refused}`);
  const sums: { line: AskedLine; colourWords: string; stems: number }[] = [];
  for (const line of askedLines(booking, recipes)) {
    const sum = sums.find((known) => isAlike(known.line, line));
    if (sum) sum.stems += line.stems;
    else sums.push({ line, colourWords: line.colours.join(), stems: line.stems });
  }
  const unacceptable = [
    ...booking.unacceptableCropIds.toSorted((a, b) => a - b),
    ...booking.unacceptableColours.toSorted(),
  ].join();
  return sums.sort(inOrder).map(({ line: { role, cropId, cropOnly, asks, colours }, colourWords, stems }) => ({
    role,
    cropId,
    cropOnly,
    asks,
    colours,
    kind: `${role}/${cropId ?? ""}/${cropOnly}/${asks.join()}/${colourWords}/${unacceptable}`,
    stemsWithoutSpare: stems,
    stems: wholeStems(stems * (1 + booking.spareShare)),
  }));
}

/**
 * The needs of one booking, each with the last day on which it may be cut by the booking's own days and the farm's habit [M12].
 * @throws RangeError if they are more stems than a booking may have
 */
export function needsOf(booking: Booking, recipes: Pick<ById<Recipe>, "get">, habit: EventHabit): Need[] {
  const asked = askedBy(booking, recipes);
  const promised = promisedStems(booking, asked);
  const eventDay = toDayNumber(booking.eventOn);
  const { leadDays, wornLeadDays } = eventDaysOf(habit, booking);
  // Field by field: spread copies are of a shape for each booking, and every look at such a need costs ten times as much.
  return asked.map((need, index) => ({
    booking,
    eventDay,
    leadDays: isWorn(need.asks) ? wornLeadDays : leadDays,
    role: need.role,
    cropId: need.cropId,
    cropOnly: need.cropOnly,
    asks: need.asks,
    colours: need.colours,
    kind: need.kind,
    stemsWithoutSpare: need.stemsWithoutSpare,
    stems: need.stems,
    promisedStems: promised[index],
  }));
}

/** Roles in their order, then colours by name, then named crops, then what is asked of the stem, so that the order of the lines changes nothing. */
const inOrder = (a: Sum, b: Sum): number =>
  ROLES.indexOf(a.line.role) - ROLES.indexOf(b.line.role) ||
  compared(a.colourWords, b.colourWords) ||
  (a.line.cropId ?? 0) - (b.line.cropId ?? 0) ||
  Number(a.line.cropOnly) - Number(b.line.cropOnly) ||
  compared(a.line.asks.join(), b.line.asks.join());

const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

type Sum = { readonly line: AskedLine; readonly colourWords: string };

const isAlike = (a: AskedLine, b: AskedLine): boolean =>
  a.role === b.role &&
  a.cropId === b.cropId &&
  a.cropOnly === b.cropOnly &&
  areSame(a.asks, b.asks) &&
  areSame(a.colours, b.colours);

const areSame = (a: readonly string[], b: readonly string[]): boolean =>
  a === b || (a.length === b.length && a.every((word, index) => word === b[index]));

const NOTHING_ASKED: readonly StemAsk[] = [];

/** In their order, none twice. */
const inAskOrder = (asks: readonly StemAsk[]): readonly StemAsk[] =>
  asks.length === 0 ? NOTHING_ASKED : STEM_ASKS.filter((ask) => asks.includes(ask));

const ANY_COLOUR: readonly Colour[] = [];

/**
 * The colours of a recipe's line, best first: the piece's own, or the booking's palette and then the alternatives its client named; for a line that goes with
 * neutral colours these last, less what the booking will not have. Any, where no palette is told.
 */
function coloursOf(line: LineColours, ofPiece: readonly Colour[], booking: BookingDraft): readonly Colour[] {
  const { palette, alternativeColours, unacceptableColours } = booking;
  const asked = ofPiece.length ? ofPiece : palette.length ? joined(palette, alternativeColours) : ANY_COLOUR;
  if (line === "any" || asked.length === 0) return ANY_COLOUR;
  if (line === "palette") return asked;
  return joined(
    asked,
    NEUTRALS.filter((colour) => !unacceptableColours.includes(colour)),
  );
}

/** A list and what another adds to it; the same list when that is nothing. */
const joined = (first: readonly Colour[], then: readonly Colour[]): readonly Colour[] => {
  const added = then.filter((colour, index) => !first.includes(colour) && then.indexOf(colour) === index);
  return added.length ? [...first, ...added] : first;
};

type AskedLine = Pick<Need, "role" | "cropId" | "cropOnly" | "asks" | "colours"> & { readonly stems: number };

function askedLines(booking: BookingDraft, recipes: Pick<ById<Recipe>, "get">): AskedLine[] {
  const fromPieces = booking.pieces.flatMap(({ recipeId, pieceCount, colours }) =>
    recipes.get(recipeId).lines.map((line) => ({
      role: line.role,
      cropId: null,
      cropOnly: false,
      asks: inAskOrder(line.asks),
      colours: coloursOf(line.colours, colours, booking),
      stems: pieceCount * line.stemsPerPiece,
    })),
  );
  const direct = booking.stemLines.map(({ role, cropId, cropOnly, asks, colours, stemCount }) => ({
    role,
    cropId,
    cropOnly,
    asks: inAskOrder(asks),
    colours,
    stems: stemCount,
  }));
  return [...fromPieces, ...direct];
}

/** Rounds up to whole stems, forgiving the last digits of floating point: 110.00000000000001 stems are 110. */
const wholeStems = (stems: number): number => Math.ceil(stems - 1e-9 * stems);

/**
 * The most whole stems for a client that so many stems cut are enough for, spare included: the inverse of a need's rounding up [N1].
 * @param stems  whole stems that a need gets, 0 or more
 */
export function stemsWithoutSpare(stems: number, spareShare: number): number {
  let promised = Math.floor(stems / (1 + spareShare));
  // Division may fall on either side of a whole stem.
  while (wholeStems((promised + 1) * (1 + spareShare)) <= stems) promised++;
  while (promised > 0 && wholeStems(promised * (1 + spareShare)) > stems) promised--;
  return promised;
}
