/** A plan among others: a what-if by its id and name, or the farm as it stands. */
export type Column = { readonly id: number; readonly name: string };

export const AS_IT_STANDS: Column = { id: 0, name: "As it stands" };
