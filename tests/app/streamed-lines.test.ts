import { expect, test } from "vitest";
import { streamedLines } from "../../app/enquiry/answer/streamed-lines";

const readerOf = (response: Response) => {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  if (!reader) throw new Error("no stream");
  return reader;
};

test("all lines come, in their order, one a line", async () => {
  expect(await streamedLines([1, { a: 2 }, null].values()).text()).toBe('1\n{"a":2}\nnull\n');
});

test("who has read the first line and goes away costs no second", async () => {
  let workedCount = 0;
  let isEnded = false;
  function* work() {
    try {
      for (;;) yield ++workedCount;
    } finally {
      isEnded = true;
    }
  }
  const reader = readerOf(streamedLines(work()));
  expect((await reader.read()).value).toBe("1\n");
  await reader.cancel();
  await new Promise((later) => setTimeout(later, 200));
  expect([workedCount, isEnded]).toEqual([1, true]);
});
