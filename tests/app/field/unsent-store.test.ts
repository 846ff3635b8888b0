import { afterEach, expect, test, vi } from "vitest";
import { counted, goingOut } from "#lib/domain/unsent";
import { allUnsent, dropUnsent, isOnlyInThisPage, keepUnsent } from "../../../app/field/unsent-store.client";

/** A browser's storage, as full as it is said to be. */
function storage() {
  const kept = new Map<string, string>();
  const room = { isLeft: true };
  const localStorage = {
    get length() {
      return kept.size;
    },
    key: (index: number) => [...kept.keys()][index] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (!room.isLeft) throw new DOMException("no room", "QuotaExceededError");
      kept.set(key, text);
    },
    removeItem: (key: string) => void kept.delete(key),
  };
  vi.stubGlobal("window", { localStorage });
  return room;
}

afterEach(() => void vi.unstubAllGlobals());

const TALLY = {
  key: "key-12345",
  cutOn: "2027-06-10",
  bedId: 1,
  varietyId: 2,
  asked: [],
  stemsCut: 12,
  seenStems: 0,
  seenRevision: 3,
  countedAt: "2027-06-10T06:40:00Z",
};

test("a count that the storage has no room to keep as it stands now is there once, as it stands, and goes when it is dropped", () => {
  const room = storage();
  const one = counted(TALLY, "B1, Dahlia Maple Row");
  keepUnsent(one);
  expect([allUnsent(), isOnlyInThisPage(TALLY.key)]).toEqual([[one], false]);
  room.isLeft = false;
  keepUnsent(goingOut(one));
  expect([allUnsent(), isOnlyInThisPage(TALLY.key)]).toEqual([[goingOut(one)], true]);
  dropUnsent(TALLY.key);
  expect(allUnsent()).toEqual([]);
});
