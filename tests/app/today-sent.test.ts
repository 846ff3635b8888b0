import fc from "fast-check";
import { expect, test } from "vitest";
import type { FarmDatabase } from "#db/client";
import { revision } from "#db/journal/journal";
import { talliesOn } from "#db/read/tallies";
import { removeCuts } from "#db/write/cuts";
import type { SentTally } from "#lib/domain/unsent";
import { settle } from "../../app/today/take-tally";
import { ON, stems, sum } from "../db/counted-rows";
import { kept, withFarm } from "../db/kept-farm";
import { anySeed } from "../plan/any-farm";
import { answered, anyStep, dayInTheField, row } from "./day-in-the-field";

/** What phones send of a day's list, as the route takes it. */

const recordedRows = (database: FarmDatabase) => talliesOn(database, ON).map(({ stemsCut }) => stemsCut);

test("[T10] nine that were really seven are seven, and with four that another counted since they are eleven", () =>
  withFarm((database) => {
    answered(database, row(database));
    const list = row(database, { kind: "corrected", stemsCut: 7 });
    answered(database, row(database, { stemsCut: 4, seenStems: 0, seenRevision: 0 }));
    expect(stems(database)).toBe(13);
    expect([answered(database, list), answered(database, list), stems(database)]).toEqual([[], [], 11]);
  }));

test("[T10] a correction from before another one is told with both numbers, and changes nothing", () =>
  withFarm((database) => {
    answered(database, row(database));
    const [mine, theirs] = [7, 5].map((stemsCut) => row(database, { kind: "corrected", stemsCut }));
    expect(answered(database, theirs)).toEqual([]);
    expect(answered(database, mine)).toEqual([
      "the record was corrected to 5 stems meanwhile: say on the list whether it is 7 stems",
    ]);
    expect(stems(database)).toBe(5);
  }));

test("[T10] a record is taken back as the list had shown it: what another counted since stands, and without that the row is open again", () => {
  for (const others of [0, 4])
    withFarm((database) => {
      answered(database, row(database));
      const list = row(database, { kind: "taken back", stemsCut: 0 });
      if (others > 0) answered(database, row(database, { stemsCut: others, seenStems: 0, seenRevision: 0 }));
      expect([answered(database, list), stems(database)]).toEqual([[], others]);
      expect(recordedRows(database)).toEqual(others > 0 ? [others] : []);
      expect([answered(database, list), stems(database)]).toEqual([[], others]);
    });
});

test("[T10] a count kept apart, whose corrected record was then taken back, is the record once it is added, and nothing once it is left out", () => {
  for (const isAdded of [true, false])
    withFarm((database) => {
      const seen = { seenStems: 0, seenRevision: revision(database) };
      answered(database, row(database));
      answered(database, row(database, { kind: "corrected", stemsCut: 7 }));
      const back = row(database, { kind: "taken back", stemsCut: 0 });
      answered(database, row(database, { ...seen, stemsCut: 4 }));
      expect(answered(database, back)).toEqual([]);
      expect(stems(database)).toBe(0);
      const [late] = talliesOn(database, ON).filter(({ isApart }) => isApart);
      expect(late.stemsCut).toBe(4);
      expect(settle(database, { id: late.id, isAdded }, kept(database)).ok).toBe(true);
      expect(stems(database)).toBe(isAdded ? 4 : 0);
    });
});

test("[T10] so waits a count kept apart of a record that is taken back at the machine", () =>
  withFarm((database) => {
    const seen = { seenStems: 0, seenRevision: revision(database) };
    answered(database, row(database));
    answered(database, row(database, { kind: "corrected", stemsCut: 7 }));
    answered(database, row(database, { ...seen, stemsCut: 4 }));
    const ids = kept(database).cuts.map(({ id }) => id);
    expect(removeCuts(database, ids).ok).toBe(true);
    expect(talliesOn(database, ON).map(({ stemsCut, isApart }) => [stemsCut, isApart])).toEqual([[4, true]]);
  }));

test("[T10] a count is taken back once, whether it comes before its taking back, after it, or both", () => {
  for (const order of ["count, back", "back, count", "back, back", "count, back, count, back"])
    withFarm((database) => {
      answered(database, row(database, { stemsCut: 4 }));
      const count = row(database);
      const back = row(database, { kind: "taken back", of: count, stemsCut: 0 });
      for (const step of order.split(", ")) expect(answered(database, step === "count" ? count : back)).toEqual([]);
      expect([stems(database), recordedRows(database)]).toEqual([4, [4]]);
    });
});

test("[T10] a count that was corrected since is not taken back unasked; one that the farm could not take need not be", () =>
  withFarm((database) => {
    const count = row(database);
    answered(database, count);
    answered(database, row(database, { kind: "corrected", stemsCut: 7 }));
    expect(answered(database, row(database, { kind: "taken back", of: count }))).toEqual([
      "the record was corrected to 7 stems meanwhile: look at it before you take a count back",
    ]);
    const nowhere = row(database, { bedId: 99 });
    expect(answered(database, row(database, { kind: "taken back", of: nowhere }))).toEqual([]);
    expect(stems(database)).toBe(7);
  }));

test("[T10] eight phones that count and take counts back, whatever is lost, doubled or late: the record is the sum of what nobody took back", () => {
  fc.assert(
    fc.property(fc.array(anyStep, { minLength: 20, maxLength: 120 }), (steps) =>
      withFarm((database) => {
        const said = new Map<string, number>();
        const left = dayInTheField(
          database,
          steps,
          (kind) => kind === "counted" || kind === "take a count back",
          ({ key, kind, stemsCut, of }, problems) => {
            expect(problems).toEqual([]);
            // The second method: a count is worth its stems, once it was taken back nothing.
            if (of) said.set(of.key, 0);
            else if (kind === undefined && !said.has(key)) said.set(key, stemsCut);
          },
        );
        expect(left).toEqual([]);
        expect(stems(database)).toBe([...said.values()].reduce((all, one) => all + one, 0));
        expect(talliesOn(database, ON).filter(({ isApart }) => isApart)).toEqual([]);
      }),
    ),
    { ...anySeed, numRuns: 25 },
  );
});

test("[T10] with corrections and records taken back too: each is done once or refused in words, none unless somebody had changed the record since, and counts made since its list stand beside it", () => {
  fc.assert(
    fc.property(fc.array(anyStep, { minLength: 20, maxLength: 120 }), (steps) =>
      withFarm((database) => {
        // The second method: a sheet of paper, with the counts that stand on it and when they came.
        let paper = 0;
        let changedAt = 0;
        let rowCount = 0;
        const counts = new Map<string, { readonly stems: number; readonly at: number }>();
        const done = new Set<string>();
        const onPaper = ({ key, kind, of, stemsCut, seenRevision }: SentTally, at: number, isInSum: boolean) => {
          if (of) {
            paper -= counts.get(of.key)?.stems ?? 0;
            counts.delete(of.key);
          } else if (kind === undefined) {
            if (!isInSum) return;
            paper += stemsCut;
            counts.set(key, { stems: stemsCut, at });
          } else {
            const since = [...counts].filter(([, one]) => one.at > seenRevision);
            paper = (kind === "corrected" ? stemsCut : 0) + since.reduce((all, [, one]) => all + one.stems, 0);
            if (kind === "taken back")
              for (const [older, one] of counts) if (one.at <= seenRevision) counts.delete(older);
            changedAt = at;
          }
        };
        const left = dayInTheField(
          database,
          steps,
          () => true,
          (sent, problems) => {
            const before = rowCount;
            rowCount = talliesOn(database, ON).filter(({ isApart }) => !isApart).length;
            if (problems.length > 0) expect(changedAt).toBeGreaterThan(sent.of ? 0 : sent.seenRevision);
            else if (!done.has(sent.key)) onPaper(sent, revision(database), rowCount > before);
            if (problems.length === 0) done.add(sent.key);
            if (sent.of && problems.length === 0) done.add(sent.of.key);
            expect(stems(database)).toBe(paper);
          },
        );
        expect(left.every(({ state }) => state === "refused" || state === "sent")).toBe(true);
        expect(sum(talliesOn(database, ON).filter(({ isApart }) => !isApart))).toBe(
          [...counts.values()].reduce((all, one) => all + one.stems, 0),
        );
      }),
    ),
    { ...anySeed, numRuns: 25 },
  );
});
