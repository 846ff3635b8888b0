import fc from "fast-check";
import type { FarmDatabase } from "#db/client";
import { revision } from "#db/journal/journal";
import { sentTallySchema } from "#lib/domain/tally";
import {
  answeredTally,
  counted,
  goingOut,
  isShownBy,
  isTakenBack,
  type SentTally,
  type TallyAnswer,
  toSend,
  type Unsent,
} from "#lib/domain/unsent";
import { takeSent } from "../../app/today/take-sent";
import { ON, stems } from "../db/counted-rows";

/** Phones in the field and what they send of one row of a day's list, over a line that loses, doubles and delays. */

/** What stands in the way of a message, sent as the route takes it. */
export const answered = (database: FarmDatabase, sent: unknown): string[] =>
  takeSent(database, sentTallySchema.parse(JSON.parse(JSON.stringify(sent)))).map(({ message }) => message);

let keys = 0;
/** A count of the first row of the list as it stands, or what else is said of it. */
export const row = (database: FarmDatabase, given: Partial<SentTally> = {}): SentTally => ({
  ...{ key: `key-${String(++keys).padStart(8, "0")}`, cutOn: ON, bedId: 1, varietyId: 1, asked: [[1, 9]] },
  ...{ stemsCut: 9, seenStems: stems(database), seenRevision: revision(database), countedAt: "2027-06-10T05:40:00Z" },
  ...given,
});
/** A phone in the field: what it has to send, and the list it goes by. */
type Phone = { unsent: Unsent[]; seenRevision: number; seenStems: number };
const KINDS = ["counted", "counted", "counted", "take a count back", "corrected", "taken back"] as const;
type Step = typeof anyStep extends fc.Arbitrary<infer One> ? One : never;
export const anyStep = fc.oneof(
  fc.record({
    step: fc.constant("say" as const),
    phone: fc.nat(7),
    kind: fc.constantFrom(...KINDS),
    stems: fc.nat(12),
  }),
  fc.record({ step: fc.constant("send" as const), phone: fc.nat(7), isHeard: fc.boolean() }),
  fc.record({ step: fc.constant("arrive" as const), which: fc.nat(1000), again: fc.boolean() }),
  fc.record({ step: fc.constant("list" as const), phone: fc.nat(7), which: fc.nat(7) }),
);

/** Lets a day pass on which messages are lost, doubled and overtake one another; in the evening every phone sends until it is answered. */
export function dayInTheField(
  database: FarmDatabase,
  steps: readonly Step[],
  isOf: (kind: (typeof KINDS)[number]) => boolean,
  onAnswer: (sent: SentTally, problems: readonly string[]) => void,
) {
  const phones = Array.from(
    { length: 8 },
    (): Phone => ({ unsent: [], seenRevision: revision(database), seenStems: 0 }),
  );
  const onTheWay: SentTally[] = [];
  const arrives = (sent: SentTally): TallyAnswer => {
    const problems = answered(database, sent);
    onAnswer(sent, problems);
    return { key: sent.key, problems };
  };
  const sends = (phone: Phone, isHeard: boolean) => {
    const batch = toSend(phone.unsent, 5);
    const out = new Set(batch.map(({ tally }) => tally.key));
    phone.unsent = phone.unsent.map((one) => (out.has(one.tally.key) ? goingOut(one) : one));
    if (!isHeard) return void onTheWay.push(...batch.map(({ tally }) => tally));
    const answers = batch.map(({ tally }) => arrives(tally));
    phone.unsent = phone.unsent.map((one) => answeredTally(one, answers, revision(database)));
  };
  const readsList = (phone: Phone) => {
    Object.assign(phone, { seenRevision: revision(database), seenStems: stems(database) });
    const shown = phone.unsent.filter((one) => isShownBy(one, phone.seenRevision));
    const gone = new Set(shown.flatMap(({ tally }) => [tally.key, ...(tally.of ? [tally.of.key] : [])]));
    phone.unsent = phone.unsent.filter(({ tally }) => !gone.has(tally.key));
  };
  for (const step of steps) {
    if (step.step === "say" && isOf(step.kind)) {
      const phone = phones[step.phone];
      const { seenRevision, seenStems } = phone;
      const said = row(database, { stemsCut: step.stems, seenRevision, seenStems });
      if (step.kind === "take a count back") {
        const of = phone.unsent.find(
          (one) => one.state === "sent" && !one.tally.kind && !isTakenBack(one, phone.unsent),
        );
        if (of) phone.unsent.push(counted({ ...said, kind: "taken back", of: of.tally, stemsCut: 0 }, "D1"));
      } else if (step.kind === "counted") phone.unsent.push(counted(said, "D1"));
      else if (seenStems > 0) phone.unsent.push(counted({ ...said, kind: step.kind }, "D1"));
    } else if (step.step === "send") sends(phones[step.phone], step.isHeard);
    else if (step.step === "arrive" && onTheWay.length > 0) {
      const at = step.which % onTheWay.length;
      arrives(onTheWay[at]);
      if (!step.again) onTheWay.splice(at, 1);
    } else if (step.step === "list") readsList(phones[step.phone]);
  }
  for (const phone of phones) while (toSend(phone.unsent, 1).length > 0) sends(phone, true);
  for (const late of onTheWay) arrives(late);
  for (const phone of phones) readsList(phone);
  return phones.flatMap(({ unsent }) => unsent);
}
