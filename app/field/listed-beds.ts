/** A bed as a list names it. */
export type ListedBed = { readonly id: number; readonly name: string };

/** The beds of a list's rows, each once, in the order in which they are walked. */
export const listedBeds = (rows: readonly { readonly bedId: number; readonly place: string }[]): ListedBed[] => [
  ...new Map(rows.map(({ bedId, place }) => [bedId, { id: bedId, name: place }])).values(),
];
