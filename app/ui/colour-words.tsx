import type { Colour } from "#lib/domain/words";

/** One colour: its swatch, in the hue of app/look/tokens.css, and its word. */
export const ColourWord = ({ colour }: { colour: Colour }) => (
  <span>
    <span className={`swatch f-${colour}`} aria-hidden="true" />
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
