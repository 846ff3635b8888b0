import type { Colour } from "#lib/domain/words";

/** Colours side by side in their order; readers hear their words. None means any colour. */
export const PaletteStrip = ({ colours }: { colours: readonly Colour[] }) =>
  colours.length === 0 ? (
    <small>any colour</small>
  ) : (
    <span className="palette-strip" role="img" aria-label={colours.join(", ")}>
      {colours.map((colour) => (
        <i key={colour} className={`f-${colour}`} />
      ))}
    </span>
  );
