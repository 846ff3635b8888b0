import { COLOURS, type Colour } from "#lib/domain/words";
import type { Match } from "./match";
import type { Need } from "./needs";
import type { ColourStems } from "./week-colours";

/** The stems that each booking gets, by colour and by booking id; colours in the order of `COLOURS`, none with 0 stems. They sum to the booking's covered stems. */
export const bookingColours = (match: Match): Map<number, ColourStems[]> =>
  coloursBy(match, ({ booking }) => booking.id);

/** The stems that needs get, by colour, added up by a key of theirs; a need without a key (null) is left out. */
export function coloursBy<Key>(
  { needs, supplies, servings }: Match,
  keyOf: (need: Need) => Key | null,
): Map<Key, ColourStems[]> {
  const tallies = new Map<Key, Map<Colour, number>>();
  for (const { needIndex, supplyIndex, stems } of servings) {
    const key = keyOf(needs[needIndex]);
    if (key === null) continue;
    const { colour } = supplies[supplyIndex].variety;
    const tally = tallies.get(key) ?? new Map<Colour, number>();
    tally.set(colour, (tally.get(colour) ?? 0) + stems);
    tallies.set(key, tally);
  }
  return new Map([...tallies].map(([key, tally]) => [key, inOrder(tally)]));
}

const inOrder = (tally: ReadonlyMap<Colour, number>): ColourStems[] =>
  COLOURS.flatMap((colour) => {
    const stems = tally.get(colour);
    return stems ? [{ colour, isKept: false, stems }] : [];
  });
