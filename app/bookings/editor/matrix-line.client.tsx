"use client";

import { type ReactNode, useState } from "react";
import { ROLES, type Role } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";
import { inTenths } from "#lib/plan/words/numbers";
import { useField } from "../../ui/form-context.client";
import { PaletteStrip } from "../../ui/palette-strip";
import { coloursIn } from "../../ui/typed-colours";
import { ColourField } from "./colour-field.client";

type Props = {
  /** What the line is for, chosen. */
  head: ReactNode;
  count: ReactNode;
  stems: Partial<Record<Role, number>>;
  colours: {
    name: string;
    listedAs: string;
    value: string;
    /** What no colour means. */
    none: string;
    ownColours: readonly OwnColour[];
    onChange: (colours: string) => void;
  };
  /** Beneath the colours, when they are open. */
  more?: ReactNode;
};

/** A line of the matrix: what, how many, stems of each of the six jobs, and its colours, which open beneath it. */
export function MatrixLine({ head, count, stems, colours, more }: Props) {
  const [isOpen, setIsOpen] = useState(false);
  const { problem } = useField(colours.name, colours.listedAs);
  const shown = coloursIn(colours.value, colours.ownColours);
  const isShown = isOpen || problem !== undefined;
  return (
    <>
      <tr className="matrix-line">
        <th scope="row">{head}</th>
        <td className="count">{count}</td>
        {ROLES.map((role) => (
          <td key={role} className="stems" data-role={role}>
            {stems[role] ? inTenths(stems[role]) : <span className="nil">·</span>}
          </td>
        ))}
        <td className="colours-cell">
          <button
            type="button"
            className="quiet"
            aria-expanded={isShown}
            aria-label={`${colours.listedAs}: ${colours.value || colours.none}`}
            onClick={() => setIsOpen(!isShown)}
          >
            {shown.length > 0 ? <PaletteStrip colours={shown} /> : colours.value ? "…" : colours.none}
          </button>
        </td>
      </tr>
      {isShown && (
        <tr className="matrix-more">
          <td colSpan={ROLES.length + 3}>
            <ColourField
              name={colours.name}
              label={`Colours of this line, if not ${colours.none === "palette" ? "the palette" : colours.none}`}
              listedAs={colours.listedAs}
              ownColours={colours.ownColours}
              value={colours.value}
              onChange={colours.onChange}
            />
            {more}
          </td>
        </tr>
      )}
    </>
  );
}
