import fc from "fast-check";
import { expect, test } from "vitest";
import { revision } from "#db/journal/journal";
import { saving, tallyKey } from "#db/journal/saving";
import { talliesOn } from "#db/read/tallies";
import { sentTallySchema } from "#lib/domain/tally";
import { answeredTally, counted, goingOut, isShownBy, type TallyAnswer, toSend, type Unsent } from "#lib/domain/unsent";
import { anySeed } from "../plan/any-farm";
import { corrected, ON, stems, sum, taken, tally } from "./counted-rows";
import { done, kept, withFarm } from "./kept-farm";

/** A phone in the field: what it has counted, and the list it goes by. */
type Phone = { readonly name: string; unsent: Unsent[]; seenRevision: number; seen: readonly [number, number] };

/** What may happen on a day: a tap, a sending that may get lost on its way out or on its way back, a message that comes once more, a list made anew, a correction. */
const anyStep = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constant("tap" as const),
      phone: fc.nat(19),
      bedId: fc.constantFrom(1, 2),
      stems: fc.nat(12),
    }),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constant("send" as const),
      phone: fc.nat(19),
      way: fc.constantFrom("whole", "lost out", "lost back"),
    }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("again" as const), which: fc.nat(1000) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("list" as const), phone: fc.nat(19) }) },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant("correct" as const), bedId: fc.constantFrom(1, 2), stems: fc.nat(30) }),
  },
);

test("[T10] twenty phones, whatever is lost, doubled or late: each count is in the sum once, or apart where the record was corrected meanwhile, and none is lost", () => {
  fc.assert(
    fc.property(fc.array(anyStep, { minLength: 20, maxLength: 120 }), (steps) =>
      withFarm((database) => {
        const place = (bedId: number) => tally({ bedId, varietyId: bedId });
        const onPaper = new Map([1, 2].map((bedId) => [bedId, { stems: 0, apart: 0, correctedAt: 0, taps: 0 }]));
        const phones: Phone[] = Array.from({ length: 20 }, (_, index) => ({
          name: `Phone ${index}`,
          unsent: [],
          seenRevision: revision(database),
          seen: [0, 0],
        }));
        const sentBefore: { name: string; sent: unknown }[] = [];
        const arrived = new Set<string>();
        /** The farm's end of the line, by the schema of its door. */
        const hears = (name: string, sent: unknown): TallyAnswer => {
          const { key, ...content } = sentTallySchema.parse(sent);
          const save = { key: tallyKey(key), fingerprint: JSON.stringify(content), seenRevision: null, by: name };
          done(saving(database, save, () => taken(database, content, name)));
          if (!arrived.has(key)) {
            // The second method: a sheet of paper, on which a count from a list older than a correction goes into a column of its own.
            const of = onPaper.get(content.bedId);
            if (of && content.seenRevision < of.correctedAt) of.apart += content.stemsCut;
            else if (of) of.stems += content.stemsCut;
          }
          arrived.add(key);
          return { key, problems: [] };
        };
        const sends = (phone: Phone, way: string) => {
          const batch = toSend(phone.unsent, 5);
          const keys = new Set(batch.map((one) => one.tally.key));
          phone.unsent = phone.unsent.map((one) => (keys.has(one.tally.key) ? goingOut(one) : one));
          if (way === "lost out") return;
          for (const one of batch) sentBefore.push({ name: phone.name, sent: JSON.parse(JSON.stringify(one.tally)) });
          const answers = batch.map((one) => hears(phone.name, one.tally));
          const now = revision(database);
          if (way === "whole") phone.unsent = phone.unsent.map((one) => answeredTally(one, answers, now));
        };
        const readsList = (phone: Phone) => {
          phone.seenRevision = revision(database);
          phone.seen = [stems(database, 1), stems(database, 2)];
          phone.unsent = phone.unsent.filter((one) => !isShownBy(one, phone.seenRevision));
        };
        let tapCount = 0;
        for (const step of steps) {
          if (step.kind === "tap") {
            const phone = phones[step.phone];
            const { seenRevision, seen } = phone;
            const content = {
              ...place(step.bedId),
              stemsCut: step.stems,
              seenRevision,
              seenStems: seen[step.bedId - 1],
            };
            phone.unsent.push(counted({ ...content, key: `tap-${String(++tapCount).padStart(6, "0")}` }, "D1"));
            const of = onPaper.get(step.bedId);
            if (of) of.taps += step.stems;
          } else if (step.kind === "send") sends(phones[step.phone], step.way);
          else if (step.kind === "again" && sentBefore.length > 0) {
            const { name, sent } = sentBefore[step.which % sentBefore.length];
            hears(name, sent);
          } else if (step.kind === "list") readsList(phones[step.phone]);
          else if (step.kind === "correct" && kept(database).cuts.some(({ bedId }) => bedId === step.bedId)) {
            const of = onPaper.get(step.bedId);
            if (!of) continue;
            done(corrected(database, step.stems, place(step.bedId)));
            of.stems = step.stems;
            of.correctedAt = revision(database);
          }
        }
        // In the evening all come back to where there is a line.
        for (const phone of phones) while (toSend(phone.unsent, 1).length > 0) sends(phone, "whole");
        for (const phone of phones) readsList(phone);
        expect(phones.flatMap(({ unsent }) => unsent)).toEqual([]);
        expect(arrived.size).toBe(tapCount);
        const rows = talliesOn(database, ON);
        expect(rows.length).toBe(tapCount);
        for (const [bedId, paper] of onPaper) {
          const ofBed = rows.filter((row) => row.bedId === bedId);
          expect(sum(ofBed)).toBe(paper.taps);
          expect(stems(database, bedId)).toBe(paper.stems);
          expect(sum(ofBed.filter(({ isApart }) => isApart))).toBe(paper.apart);
        }
      }),
    ),
    { ...anySeed, numRuns: 25 },
  );
});
