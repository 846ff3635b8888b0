import { expect, test } from "vitest";
import { keptGrid } from "../../app/beds/grid/kept-grid";

const ROWS = [
  ["D8", "Dahlia", "40"],
  ["", "", ""],
];

test("a grid that this browser kept comes back cell by cell", () => {
  expect(keptGrid(JSON.stringify(ROWS), 3)).toEqual(ROWS);
});

test("what is no grid of these columns is left, so that the page opens all the same", () => {
  expect(keptGrid(JSON.stringify(ROWS), 4)).toBeNull();
  for (const kept of ["", "[", "null", "[]", "{}", "[[1,2,3]]", '["D8"]']) expect(keptGrid(kept, 3)).toBeNull();
});
