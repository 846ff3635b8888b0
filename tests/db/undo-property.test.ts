import fc from "fast-check";
import { expect, test } from "vitest";
import { revision, undoChange } from "#db/journal/journal";
import type { Snapshot } from "#lib/domain/snapshot";
import { kept, withFarm } from "./kept-farm";
import { SEASON_STEPS } from "./season-steps";
import type { Step } from "./step";
import { anyStep, BOOKED_STEPS } from "./steps";

const SEED = 20_270_612;

const inTurn = fc.sample(fc.tuple(...BOOKED_STEPS, ...SEASON_STEPS), { seed: SEED, numRuns: 4 });

test("whatever was written, undoing it all gives each earlier farm back in turn, and undoing the undos the last one", () => {
  const words = new Set<string>();
  fc.assert(
    fc.property(fc.array(anyStep, { minLength: 5, maxLength: 20 }), (steps) =>
      withFarm((database) => {
        const made: { changeId: number; before: Snapshot; after: Snapshot }[] = [];
        let before = kept(database);
        for (const { word, run } of steps) {
          const reached = revision(database);
          const written = run(database, before);
          const after = kept(database);
          if (written.ok && written.changeId !== null) {
            words.add(word);
            made.push({ changeId: written.changeId, before, after });
            expect(revision(database)).toBe(reached + 1);
          } else {
            // Refused, or nothing to do: then nothing is touched.
            expect(after).toEqual(before);
            expect(revision(database)).toBe(reached);
          }
          before = after;
        }
        const undos = made.toReversed().map(({ changeId, before, after }) => {
          const undone = undoChange(database, changeId);
          expect(undone).toMatchObject({ ok: true });
          expect(kept(database)).toEqual(before);
          return { undoId: undone.ok ? undone.changeId : null, after };
        });
        for (const { undoId, after } of undos.toReversed()) {
          expect(undoId).not.toBeNull();
          expect(undoChange(database, undoId ?? 0)).toMatchObject({ ok: true });
          expect(kept(database)).toEqual(after);
        }
      }),
    ),
    // Beside what chance brings, every write of a season in turn, so that each way back finds what it takes back.
    { seed: SEED, numRuns: 60, examples: inTurn.map((steps): [Step[]] => [[...steps]]) },
  );
  // The property would prove nothing about a kind of write that never came through.
  expect([...words].sort()).toEqual([...WRITES].sort());
});

const WRITES = [
  ...["update farm", "empty farm", "add crop", "update crop", "remove crop"],
  ...[
    "add variety",
    "update variety",
    "remove variety",
    "put curve of a crop",
    "put curve of a planting",
    "put curve of a variety",
    "remove curve",
  ],
  ...["put recipe", "replace recipe", "remove recipe", "add bed", "update bed", "remove bed"],
  ...["add planting", "update planting", "remove planting", "set treatment", "carry plantings"],
  ...[
    "put stems into the cooler",
    "take stems out of the cooler",
    "put order",
    "remove order",
    "record cuts",
    "count a row",
    "correct a row",
    "take back cuts",
    ...["move stems out of the cooler", "take a move back"],
    ...["order from a supplier", "change an order", "receive an order", "take back an arrival", "cancel an order"],
    "note buds",
    ...["write down what is left", "take back what is left"],
    ...["keep first cuts", "change a first cut", "take a first cut away"],
    "review an event",
    "take back a review",
    "take or remove weather",
    "take figures",
  ],
  ...["add booking", "update booking", "set status or lapse", "remove booking", "import", "adopt"],
];
