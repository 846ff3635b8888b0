import { expect, test } from "vitest";
import { ArcList } from "#lib/maths/arc-list";

const copied = (arcs: ArcList, at: number, fromOffset: number, toOffset: number) => {
  const room = at + arcs.count;
  const [from, to, cost] = [new Int32Array(room), new Int32Array(room), new Int32Array(room)];
  arcs.copyTo(from, to, cost, at, fromOffset, toOffset);
  return { from, to, cost };
};

test("1,000 arcs pushed into room for 1 come out in order, each with its nodes moved up and its own cost", () => {
  const arcs = new ArcList(1);
  for (let arc = 0; arc < 1000; arc++) arcs.push(arc, arc + 1, (arc * 7) % 500);
  const { from, to, cost } = copied(arcs, 3, 100, 2000);
  expect(arcs.count).toBe(1000);
  expect([...from.subarray(0, 3), ...to.subarray(0, 3), ...cost.subarray(0, 3)]).toEqual(Array(9).fill(0));
  for (let arc = 0; arc < 1000; arc++)
    expect([from[3 + arc], to[3 + arc], cost[3 + arc]]).toEqual([100 + arc, 2001 + arc, (arc * 7) % 500]);
});
