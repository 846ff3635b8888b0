import type { DecimalMark } from "./read-number";
import type { Colour } from "./words";

/** A colour name of the farm's own, and which of our colours it is. */
type OwnColour = { readonly name: string; readonly colour: Colour };

/** How the farm writes what could be read in two ways. What is absent is written as we write it. The farm's settings are one. */
export type Writing = {
  readonly decimalMark?: DecimalMark;
  readonly ownColours?: readonly OwnColour[];
};
