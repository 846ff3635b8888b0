import { expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { bedFolds } from "../../app/keep-or-dig/board/bed-folds";
import { bedRows } from "../../app/keep-or-dig/planner-data";

const [row] = bedRows(demoSnapshot(), 2027);
const named = (field: string, count: number) =>
  Array.from({ length: count }, (_, index) => ({ ...row, id: index, name: `${field} ${index + 1}` }));

test("forty beds to choose from stand in one table", () => {
  expect(bedFolds(named("Long Field", 40))).toHaveLength(1);
  expect(bedFolds(named("Long Field", 40))[0].title).toBeNull();
});

test("more are folded by field, a large field by its numbers, in their order and none lost", () => {
  const rows = [...named("Long Field", 35), ...named("Orchard", 10), ...named("Gate", 1)];
  const folds = bedFolds(rows);
  expect(folds.map(({ title }) => title)).toEqual([
    "Long Field 1 to Long Field 30",
    "Long Field 31 to Long Field 35",
    "Orchard 1 to Orchard 10",
    "Gate 1",
  ]);
  expect(folds.flatMap((fold) => fold.rows)).toEqual(rows);
});
