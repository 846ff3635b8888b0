import type { DecimalMark } from "./read-number";
import type { Colour } from "./words";

/** A colour name of the farm's own, and which of our colours it is. */
export type OwnColour = { readonly name: string; readonly colour: Colour };

/** What 6/12/2027 means to the farm: 12 June, 6 December, or nothing before it is asked. */
export const DATE_ORDERS = ["ask", "month first", "day first"] as const;
type DateOrder = (typeof DATE_ORDERS)[number];

/** How the farm writes what could be read in two ways. What is absent is written as we write it. The farm's settings are one. */
export type Writing = {
  readonly decimalMark?: DecimalMark;
  readonly dateOrder?: DateOrder;
  readonly ownColours?: readonly OwnColour[];
};
