import { addDays, type Day, inFull } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Problem } from "#lib/domain/problem";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Recipe } from "#lib/domain/records/recipe";
import { isLapsed } from "#lib/plan/road/lapsed";
import { halfPieceInWords } from "#lib/plan/words/half-pieces";

/** An event further away than this, back or ahead, is a slip of the pen in its year. */
const DAYS_BACK = 366;
const DAYS_AHEAD = 5 * 366;

/** What a booking can say and can hardly mean: half a bouquet, an event years ago, an enquiry lapsed already, stems kept for an event that asks for none, or a colour wanted and not wanted. A day that stood already may stay. */
export function oddEntries(
  draft: BookingDraft,
  { recipes, before, today }: { recipes: readonly Recipe[]; before: Booking | undefined; today: Day },
): Problem[] {
  return [
    ...halfPieces(draft, recipes),
    ...(draft.eventOn === before?.eventOn ? [] : oddDay(draft.eventOn, today)),
    ...(draft.lapsesAfter === before?.lapsesAfter ? [] : lapsedAlready(draft, today)),
    ...nothingAsked(draft),
    ...clashingColours(draft),
  ];
}

/** Pieces of which a part is asked for that comes whole. */
export const halfPieces = ({ pieces }: BookingDraft, recipes: readonly Recipe[]): Problem[] =>
  pieces.flatMap(({ recipeId, pieceCount }, index) => {
    const recipe = recipes.find(({ id }) => id === recipeId);
    const message = recipe ? halfPieceInWords(pieceCount, recipe) : null;
    return message === null ? [] : [{ place: `pieces[${index}].pieceCount`, message }];
  });

function oddDay(eventOn: Day, today: Day): Problem[] {
  const isOdd = eventOn < addDays(today, -DAYS_BACK) || eventOn > addDays(today, DAYS_AHEAD);
  return isOdd ? [{ place: "eventOn", message: `${inFull(eventOn)} is years away from today: check the year` }] : [];
}

/** An enquiry or a hold that would have lapsed before it was saved. */
const lapsedAlready = (draft: BookingDraft, today: Day): Problem[] =>
  isLapsed(draft, today)
    ? [{ place: "lapsesAfter", message: "this day is past: choose one from today on, or leave it empty" }]
    : [];

/** A colour that is wanted and not wanted: nobody could tell which is meant. */
function clashingColours({ unacceptableColours, ...draft }: BookingDraft): Problem[] {
  const lists = [
    { place: "palette", colours: draft.palette },
    { place: "alternativeColours", colours: draft.alternativeColours },
    ...draft.pieces.map(({ colours }, index) => ({ place: `pieces[${index}].colours`, colours })),
    ...draft.stemLines.map(({ colours }, index) => ({ place: `stemLines[${index}].colours`, colours })),
  ];
  return lists.flatMap(({ place, colours }) => {
    const clashing = colours.filter((colour) => unacceptableColours.includes(colour));
    if (clashing.length === 0) return [];
    return [{ place, message: `${allOf(clashing)} stands here and among the colours not wanted: take it out of one` }];
  });
}

function nothingAsked({ status, pieces, stemLines }: BookingDraft): Problem[] {
  const isPromise = status === "held" || status === "confirmed";
  if (!isPromise || pieces.length + stemLines.length > 0) return [];
  const message = `add a piece or stems: a ${status} booking without any keeps no flowers for itself; an enquiry may wait without`;
  return [{ place: "", message }];
}
