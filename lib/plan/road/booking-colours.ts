import { COLOURS, type Colour } from "#lib/domain/words";
import type { Match } from "./match";
import type { ColourStems } from "./week-colours";

/** The stems that each booking gets, by colour and by booking id; colours in the order of `COLOURS`, none with 0 stems. They sum to the booking's covered stems. */
export function bookingColours({ needs, supplies, servings }: Match): Map<number, ColourStems[]> {
  const tallies = new Map<number, Map<Colour, number>>();
  for (const { needIndex, supplyIndex, stems } of servings) {
    const { id } = needs[needIndex].booking;
    const { colour } = supplies[supplyIndex].variety;
    const tally = tallies.get(id) ?? new Map<Colour, number>();
    tally.set(colour, (tally.get(colour) ?? 0) + stems);
    tallies.set(id, tally);
  }
  return new Map([...tallies].map(([id, tally]) => [id, inOrder(tally)]));
}

const inOrder = (tally: ReadonlyMap<Colour, number>): ColourStems[] =>
  COLOURS.flatMap((colour) => {
    const stems = tally.get(colour);
    return stems ? [{ colour, isKept: false, stems }] : [];
  });
