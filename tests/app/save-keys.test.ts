import { describe, expect, test } from "vitest";
import { SaveKeys } from "../../app/ui/sending";

describe("the keys of one form's sendings", () => {
  test("a double click has one key, and two contents sent shortly after one another have two", () => {
    const keys = new SaveKeys();
    const first = keys.keyOf("a");
    expect(keys.keyOf("a")).toBe(first);
    expect(keys.keyOf("b")).not.toBe(first);
  });

  test("the same content sent again after it was answered is another sending", () => {
    const keys = new SaveKeys();
    const first = keys.keyOf("a");
    keys.settle("a", true);
    expect(keys.keyOf("a")).not.toBe(first);
  });

  test("after a sending without an answer the next has its key, whatever it says, until one is answered", () => {
    const keys = new SaveKeys();
    const lost = keys.keyOf("a");
    keys.settle("a", false);
    expect(keys.keyOf("b")).toBe(lost);
    keys.settle("b", false);
    expect(keys.keyOf("a")).toBe(lost);
    keys.settle("a", true);
    expect(keys.keyOf("a")).not.toBe(lost);
  });

  test("an answer to another content leaves a lost key to the next try", () => {
    const keys = new SaveKeys();
    const lost = keys.keyOf("a");
    keys.keyOf("b");
    keys.settle("a", false);
    keys.settle("b", true);
    expect(keys.keyOf("a")).toBe(lost);
  });
});
