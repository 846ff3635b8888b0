import { yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Recipe, RecipeLine } from "#lib/domain/records/recipe";
import { usedStems } from "#lib/domain/records/review";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { Role } from "#lib/domain/words";
import { askedBy } from "#lib/plan/road/needs";

/** Events that a suggestion rests on at least. Our choice: one or two may be odd ones. */
const LEAST_EVENTS = 3;

/** The farm's spare, before and after, as shares. */
export type SpareAdvice = { readonly was: number; readonly suggested: number; readonly eventCount: number };

/** Stems of a role in one piece, before and after. */
export type RecipeAdvice = {
  readonly recipe: Recipe;
  readonly role: Role;
  readonly was: number;
  readonly suggested: number;
  readonly eventCount: number;
};

/** What events that were reviewed say of recipes and of the spare. */
export type ReviewAdvice = { readonly spare: SpareAdvice | null; readonly recipes: readonly RecipeAdvice[] };

/**
 * What the reviewed events of a season and the one before suggest [V2] [V3]: where three or more of them all used less than is asked, or all more, the step
 * that the most cautious of them bears out. The spare is spoken of only where no recipe is.
 */
export function reviewAdvice(snapshot: Snapshot, seasonYear: number): ReviewAdvice {
  const events = reviewedEvents(snapshot, seasonYear);
  const recipes = snapshot.recipes.flatMap((recipe) =>
    recipe.lines.flatMap((line) => recipeAdvice(recipe, line, events) ?? []),
  );
  return { spare: recipes.length > 0 ? null : spareAdvice(snapshot.farm.spareShare, events), recipes };
}

/** The recipe with the stems that are suggested for its role. */
export const recipeWith = ({ recipe, role, suggested }: RecipeAdvice): Recipe => ({
  ...recipe,
  lines: recipe.lines.map((line) => (line.role === role ? { ...line, stemsPerPiece: suggested } : line)),
});

/** An event of which every role is reviewed: what it asks for without spare, by today's recipes, and what it used. */
type ReviewedEvent = {
  readonly booking: Booking;
  readonly asked: ReadonlyMap<Role, number>;
  readonly used: ReadonlyMap<Role, number>;
};

function reviewedEvents({ bookings, recipes, reviews }: Snapshot, seasonYear: number): ReviewedEvent[] {
  const ofId = new ById("recipe", recipes);
  return bookings.flatMap((booking) => {
    const isRecent = [seasonYear, seasonYear - 1].includes(yearOf(booking.eventOn));
    const ofEvent = isRecent ? reviews.filter(({ bookingId }) => bookingId === booking.id) : [];
    if (ofEvent.length === 0 || booking.status === "cancelled") return [];
    const asked = new Map<Role, number>();
    for (const { role, stemsWithoutSpare } of askedBy(booking, ofId))
      asked.set(role, (asked.get(role) ?? 0) + stemsWithoutSpare);
    const used = new Map(ofEvent.map((review) => [review.role, usedStems(review)]));
    return asked.size > 0 && [...asked.keys()].every((role) => used.has(role)) ? [{ booking, asked, used }] : [];
  });
}

const sum = (stems: Iterable<number>): number => [...stems].reduce((all, one) => all + one, 0);

function spareAdvice(was: number, events: readonly ReviewedEvent[]): SpareAdvice | null {
  if (events.length < LEAST_EVENTS) return null;
  const spares = events.map(({ asked, used }) => sum(used.values()) / sum(asked.values()) - 1);
  const least = Math.min(...spares);
  const most = Math.max(...spares);
  const suggested = most < was ? Math.max(0, upTo(most, 100)) : least > was ? Math.min(1, downTo(least, 100)) : was;
  return Math.abs(suggested - was) < 0.01 - FLOATING ? null : { was, suggested, eventCount: events.length };
}

/** Of a recipe with one line of the role, from events in which it asks for half of the role's stems or more. */
function recipeAdvice(recipe: Recipe, line: RecipeLine, all: readonly ReviewedEvent[]): RecipeAdvice | null {
  const { role, stemsPerPiece: was } = line;
  if (recipe.lines.filter((one) => one.role === role).length > 1) return null;
  const events = all.filter(({ booking, asked }) => {
    const pieces = sum(booking.pieces.flatMap((piece) => (piece.recipeId === recipe.id ? [piece.pieceCount] : [])));
    return pieces * was >= (asked.get(role) ?? Number.POSITIVE_INFINITY) / 2;
  });
  if (events.length < LEAST_EVENTS) return null;
  const shares = events.map(({ booking, asked, used }) => {
    const share = (used.get(role) ?? 0) / (asked.get(role) ?? 1);
    return { share, withSpare: share / (1 + booking.spareShare) };
  });
  const most = Math.max(...shares.map(({ share }) => share));
  const least = Math.min(...shares.map(({ withSpare }) => withSpare));
  // Whole stems are rounded up once a need, so that one more than was asked says nothing.
  const isMore = events.every(
    ({ booking, asked, used }) => (used.get(role) ?? 0) >= (asked.get(role) ?? 0) * (1 + booking.spareShare) + 1,
  );
  const suggested =
    most < 1 ? Math.min(was, upTo(most * was, 2)) : isMore ? Math.max(was, downTo(least * was, 2)) : was;
  return suggested === was || suggested <= 0 ? null : { recipe, role, was, suggested, eventCount: events.length };
}

const FLOATING = 1e-9;

/** The next whole part of so many, up or down; a last digit of floating point is none. */
const upTo = (count: number, parts: number): number => Math.ceil(count * parts - FLOATING) / parts;
const downTo = (count: number, parts: number): number => Math.floor(count * parts + FLOATING) / parts;
