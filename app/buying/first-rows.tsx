import { inWholes } from "#lib/plan/words/numbers";

/** A large farm has thousands of rows here, which take a second to make and a megabyte each thousand: what is due first is shown first. */
export const ROWS_AT_FIRST = 100;

export const firstOf = <Row,>(rows: readonly Row[], isAllShown: boolean): readonly Row[] =>
  isAllShown ? rows : rows.slice(0, ROWS_AT_FIRST);

/** Under a table of the first rows: how many there are, and the way to all of them. */
export const RestOf = ({ shown, all, rows }: { shown: readonly unknown[]; all: readonly unknown[]; rows: string }) =>
  shown.length < all.length && (
    <p>
      {shown.length > 0
        ? `These are the first ${inWholes(shown.length)} of ${inWholes(all.length)} ${rows}, the most urgent first.`
        : `These are ${inWholes(all.length)} ${rows}.`}{" "}
      <a href="/buying?show=all">Show all of them</a>
    </p>
  );
