/**
 * Something wrong in an uploaded sheet: the file, the line in it (from 1), the column (null: the row as a whole, or the file), what is
 * wrong and how to mend it.
 */
export type SheetProblem = {
  readonly file: string;
  readonly line: number;
  readonly column: string | null;
  readonly message: string;
};

/** Where a row stands. */
export type Place = { readonly file: string; readonly line: number };

/** "line 4 of beds.csv" */
export const placeInWords = ({ file, line }: Place): string => `line ${line} of ${file}`;
