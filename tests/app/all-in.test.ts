import { EventEmitter } from "node:events";
import type { IncomingMessage, ServerResponse } from "node:http";
import { expect, test } from "vitest";
import { allIn } from "../../app/kept-pages/all-in";

const turn = () => new Promise((resolve) => setImmediate(resolve));

/** Somebody who knocks: a reader, or one who sends something to be written. */
const knock = (method: string) => ({
  request: { method } as IncomingMessage,
  response: new EventEmitter() as ServerResponse,
});

test("those who come in one a turn are all waited for, and what they send is written first", async () => {
  const knocking = allIn(60_000);
  let comeCount = 0;
  const writing = knock("POST");
  let isWritten = false;
  const come = async () => {
    for (; comeCount < 10; comeCount++) {
      const { request, response } = knock("GET");
      knocking.note(request, response);
      await turn();
    }
    knocking.note(writing.request, writing.response);
    for (let turns = 0; turns < 10; turns++) await turn();
    isWritten = true;
    writing.response.emit("close");
  };
  const coming = come();
  await knocking.allIn();
  expect([comeCount, isWritten]).toEqual([10, true]);
  await coming;
});

test("nobody waits for ever: however many come, and though one is never done", async () => {
  const knocking = allIn();
  const { request, response } = knock("POST");
  knocking.note(request, response);
  let isOver = false;
  const coming = (async () => {
    while (!isOver) {
      const another = knock("GET");
      knocking.note(another.request, another.response);
      await turn();
    }
  })();
  await knocking.allIn();
  isOver = true;
  await coming;
});
