import { redirect } from "next/navigation";
import { expect, test } from "vitest";
import { answered } from "../../app/ui/answered.client";

test("an answer comes through as it is, and none is null, so that what was typed can stay and be sent again", async () => {
  expect(await answered(Promise.resolve({ rowCount: 3 }))).toEqual({ rowCount: 3 });
  expect(await answered(Promise.reject(new TypeError("fetch failed")))).toBe(null);
});

test("the page that an action opens next is no missing answer: it goes on to the framework", async () => {
  const opened = (async () => redirect("/beds"))();
  await expect(answered(opened)).rejects.toThrow("NEXT_REDIRECT");
});
