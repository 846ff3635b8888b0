import { describe, expect, test } from "vitest";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { askedOnce, type Told } from "../../app/threads/asked-once";

/** Work whose end is in the test's hands. */
function inHand() {
  const state = {
    begunCount: 0,
    stoppedCount: 0,
    tell: (_: unknown) => {},
    done: (_: unknown) => {},
    fail: (_: Error) => {},
  };
  const start = (tell: Told) => {
    state.begunCount++;
    state.tell = tell;
    const answer = new Promise<unknown>((done, fail) => {
      state.done = done;
      state.fail = fail;
    });
    return { answer, stop: () => state.stoppedCount++, wasStopped: () => state.stoppedCount > 0 };
  };
  return { state, start };
}
const quiet = () => {};
const farm = () => seededFarm(1, TYPICAL);

describe("the same question of the same farm", () => {
  test("is worked out once while it is asked, told to all, and kept for those who ask later", async () => {
    const [here, { state, start }] = [farm(), inHand()];
    const heard: unknown[] = [];
    const asks = [1, 2, 3].map((who) => askedOnce(here, "q", start, (progress) => heard.push([who, progress])));
    state.tell("half");
    state.done(42);
    expect(await Promise.all(asks.map(({ answer }) => answer))).toEqual([42, 42, 42]);
    expect(heard).toEqual([1, 2, 3].map((who) => [who, "half"]));
    expect(await askedOnce(here, "q", start, quiet).answer).toBe(42);
    expect(state.begunCount).toBe(1);
  });

  test("is worked out anew for another question, and for the farm after a write", async () => {
    const { state, start } = inHand();
    const here = farm();
    for (const [snapshot, question] of [
      [here, "q"],
      [here, "r"],
      [{ ...here }, "q"],
    ] as const) {
      const { answer } = askedOnce(snapshot, question, start, quiet);
      state.done(question);
      await answer;
    }
    expect(state.begunCount).toBe(3);
  });

  test("goes on while one of two waits; she who stopped is told so, and the last to stop ends it", async () => {
    const [here, { state, start }] = [farm(), inHand()];
    const [first, last] = [askedOnce(here, "q", start, quiet), askedOnce(here, "q", start, quiet)];
    first.stop();
    first.stop();
    await expect(first.answer).rejects.toThrow("Others still wait");
    expect(state.stoppedCount).toBe(0);
    last.stop();
    expect(state.stoppedCount).toBe(1);
    state.done("the best so far");
    expect(await last.answer).toBe("the best so far");
  });

  test("after a stop or a failure is begun again: part of an answer is not kept", async () => {
    const [here, { state, start }] = [farm(), inHand()];
    const stopped = askedOnce(here, "q", start, quiet);
    stopped.stop();
    state.done("part");
    await stopped.answer;
    askedOnce(here, "q", start, quiet);
    expect(state.begunCount).toBe(2);
    const [there, failing] = [farm(), inHand()];
    const failed = askedOnce(there, "q", failing.start, quiet);
    failing.state.fail(new Error("no"));
    await expect(failed.answer).rejects.toThrow("no");
    askedOnce(there, "q", failing.start, quiet);
    expect(failing.state.begunCount).toBe(2);
  });

  test("thirty-two answers of a farm are kept, the latest asked for", async () => {
    const [here, { state, start }] = [farm(), inHand()];
    const ask = async (question: string) => {
      const { answer } = askedOnce(here, question, start, quiet);
      state.done(question);
      await answer;
    };
    for (let question = 1; question <= 32; question++) await ask(`${question}`);
    await ask("1");
    await ask("33");
    expect(state.begunCount).toBe(33);
    await ask("1");
    expect(state.begunCount).toBe(33);
    await ask("2");
    expect(state.begunCount).toBe(34);
  });
});
