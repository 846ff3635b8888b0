import type { Snapshot } from "#lib/domain/snapshot";
import type { Colour, Treatment } from "#lib/domain/words";

/** What can be planted: each crop with its varieties and the ways of growing that it has a bloom curve for. */
export type PlantingChoices = readonly {
  readonly id: number;
  readonly name: string;
  readonly overwinters: boolean;
  readonly treatments: readonly Treatment[];
  readonly varieties: readonly { readonly id: number; readonly name: string; readonly colour: Colour }[];
}[];

/** Crops in order of name, varieties in theirs. */
export const plantingChoices = ({ crops, varieties, curves }: Snapshot): PlantingChoices => {
  const order = new Intl.Collator("en", { numeric: true });
  return [...crops]
    .sort((a, b) => order.compare(a.name, b.name))
    .map(({ id, name, overwinters }) => ({
      id,
      name,
      overwinters,
      treatments: [...new Set(curves.filter(({ cropId }) => cropId === id).map(({ treatment }) => treatment))],
      varieties: varieties
        .filter(({ cropId }) => cropId === id)
        .map((variety) => ({ id: variety.id, name: variety.name, colour: variety.colour }))
        .sort((a, b) => order.compare(a.name, b.name)),
    }));
};
