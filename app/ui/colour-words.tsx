import type { Colour } from "#lib/domain/words";

/** The look of each colour, always beside its word. Hues of our own, chosen to be told apart on paper and on screen. */
const HUES: Record<Colour, string> = {
  white: "#ffffff",
  cream: "#f6ecc9",
  blush: "#f3cfc6",
  pink: "#e58fa6",
  coral: "#f27d66",
  peach: "#f7bd96",
  apricot: "#f0a35c",
  orange: "#e8792b",
  yellow: "#efcf3a",
  red: "#b81f2c",
  burgundy: "#6d1a2d",
  plum: "#5d2a52",
  lavender: "#b8a5d6",
  purple: "#74459b",
  blue: "#5d7fbd",
  bronze: "#a4662f",
  green: "#6a8f56",
  silver: "#b9c4bd",
};

/** One colour: its swatch and its word. */
export const ColourWord = ({ colour }: { colour: Colour }) => (
  <span>
    <span className="swatch" style={{ background: HUES[colour] }} aria-hidden="true" />
    {colour}
  </span>
);

/** Colours in order of preference; none means any. */
export function ColourWords({ colours, none = "any colour" }: { colours: readonly Colour[]; none?: string }) {
  if (colours.length === 0) return <span>{none}</span>;
  return (
    <span className="colours">
      {colours.map((colour) => (
        <ColourWord key={colour} colour={colour} />
      ))}
    </span>
  );
}
