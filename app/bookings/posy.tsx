import type { Colour } from "#lib/domain/words";

const HEADS = [
  { size: 64, symbol: "dahlia" },
  { size: 52, symbol: "ball" },
  { size: 46, symbol: "dahlia" },
];

/** The first three colours of a palette as flower heads; the words stand beside it. The page has `FlowerHeads`. */
export const Posy = ({ colours }: { colours: readonly Colour[] }) => (
  <div className="heads" aria-hidden="true">
    {colours.slice(0, HEADS.length).map((colour, index) => (
      <svg
        key={colour}
        className={`gl f-${colour}`}
        width={HEADS[index].size}
        height={HEADS[index].size}
        aria-hidden="true"
      >
        <use href={`#${HEADS[index].symbol}`} />
      </svg>
    ))}
  </div>
);
