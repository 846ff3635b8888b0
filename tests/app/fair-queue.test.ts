import { expect, test } from "vitest";
import { oneOf, seededRandom, wholeBetween } from "#lib/maths/random";
import { FairQueue } from "../../app/threads/fair-queue";

type Job = { readonly reader: string; readonly name: string };
const queueOf = (...names: readonly string[]): FairQueue<Job> => {
  const queue = new FairQueue<Job>();
  for (const name of names) queue.put({ reader: name[0], name });
  return queue;
};
const any = () => true;
const taken = (queue: FairQueue<Job>): string[] => {
  const job = queue.take(any);
  return job ? [job.name, ...taken(queue)] : [];
};

test("three jobs of a, then two of b and one of c: they take turns, each reader's own in order", () => {
  expect(taken(queueOf("a1", "a2", "a3", "b1", "b2", "c1"))).toEqual(["a1", "b1", "c1", "a2", "b2", "a3"]);
});

test("a job that may not start yet is passed over, and keeps its reader's turn", () => {
  const queue = queueOf("a1", "b1", "a2");
  expect(queue.take(({ name }) => name !== "a1" && name !== "a2")?.name).toBe("b1");
  expect(queue.take(() => false)).toBeNull();
  expect(taken(queue)).toEqual(["a1", "a2"]);
});

test("a job put back is the very next; one taken out is gone, and so is its reader when it was the last", () => {
  const queue = queueOf("a1", "b1", "b2");
  queue.putBack({ reader: "b", name: "b0" });
  expect(queue.takeOut(({ name }) => name === "a1")?.name).toBe("a1");
  expect(queue.takeOut(({ name }) => name === "a1")).toBeNull();
  expect([queue.length, queue.countOf("a"), queue.countOf("b")]).toEqual([2 + 1, 0, 3]);
  expect(taken(queue)).toEqual(["b0", "b1", "b2"]);
});

test("over 200 random queues nobody waits longer than one job of each other reader, however many those have", () => {
  for (let seed = 1; seed <= 200; seed++) {
    const random = seededRandom(seed);
    const names = Array.from({ length: wholeBetween(random, 1, 60) }, () => oneOf(random, ["a", "a", "a", "b", "c"]));
    const queue = queueOf(...names);
    const lastTurn = new Map<string, number>();
    const order = taken(queue);
    expect(order.toSorted()).toEqual(names.toSorted());
    order.forEach((reader, turn) => {
      expect(turn - (lastTurn.get(reader) ?? -1), `seed ${seed}`).toBeLessThanOrEqual(3);
      lastTurn.set(reader, turn);
    });
  }
});
