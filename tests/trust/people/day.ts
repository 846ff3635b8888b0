import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import type { Crew, Member } from "./crew";
import type { Answer } from "./farm-line";
import type { Batch, FieldPhone } from "./field-phone";
import { Paper, placeOf } from "./paper";
import { trespass } from "./trespass";

const MOST_WAIT_MS = 60;
/** Bookings of the demo farm in late summer: what becomes of them moves none of today's rows. */
const LATE_BOOKINGS = [40, 41, 42];

/** A day on a farm that is open to its people, on which all happens that can be done from outside. Whatever is wrong is told with the seed and the step. */
export class Day {
  readonly crew: Crew;
  readonly paper = new Paper();
  readonly tried = { sendings: 0, trespasses: 0, joins: 0, kills: 0 };
  /** Own work of others that the farm has said it has: by whom. */
  readonly ownWork: string[] = [];
  readonly #random: RandomSource;
  readonly #late: { readonly phone: FieldPhone; readonly batch: Batch }[] = [];

  constructor(crew: Crew, random: RandomSource) {
    this.crew = crew;
    this.#random = random;
  }

  /** What may happen, each as often as it stands here. */
  readonly #steps: readonly (readonly [often: number, step: () => Promise<unknown>])[] = [
    [12, async () => this.#helper().phone.counts(this.#random)],
    [8, () => this.#sends(this.#helper().phone, oneOf(this.#random, ["heard", "heard", "lost back", "late"]))],
    [3, () => this.#comesLate()],
    [4, () => this.#reads(this.#helper().phone)],
    [3, async () => this.#helper().phone.takesOneBack(this.#random)],
    [2, () => this.#isCorrected()],
    [4, () => this.#trespasses()],
    [2, () => this.#doesOwnWork(oneOf(this.#random, this.crew.members))],
    [1, () => this.#joins(oneOf(this.#random, this.crew.members))],
    [3, () => this.#comesBack()],
    [1, () => this.crew.ends(oneOf(this.#random, this.crew.members))],
    [1, () => this.#takesCopy()],
    [0.5, () => this.crew.sharesCalendar()],
    [0.2, () => this.#allAreSignedOut()],
  ];

  async begins(): Promise<void> {
    await this.crew.ownerSignsIn();
    for (const member of this.crew.members) await this.#joins(member);
    for (const { phone } of this.crew.helpers) await this.#reads(phone);
  }

  /** One thing happens. */
  async passes(): Promise<void> {
    const all = this.#steps.reduce((sum, [often]) => sum + often, 0);
    let at = this.#random() * all;
    for (const [often, step] of this.#steps) {
      at -= often;
      if (at < 0) return void (await step());
    }
  }

  /** The server is killed in the middle of something, and whoever was about it does it again. */
  async isKilled(): Promise<void> {
    this.tried.kills++;
    const waitMs = wholeBetween(this.#random, 0, MOST_WAIT_MS);
    const member = oneOf(this.#random, this.crew.members);
    const work = oneOf(this.#random, [
      () => this.#allSend(),
      () => this.#allSend(),
      () => this.#isCorrected(),
      () => this.crew.joins(member),
      () => this.crew.ends(member),
    ]);
    await this.crew.line.killedDuring(work, waitMs);
    await work();
  }

  /** In the evening all come back to where there is a line, and everything that was on its way comes in. */
  async ends(): Promise<void> {
    for (const member of this.crew.members) await this.#joins(member);
    for (const { phone } of this.crew.helpers)
      for (let tries = 0; phone.isWaiting && tries < 200; tries++) await this.#sends(phone, "heard");
    while (this.#late.length > 0) await this.#comesLate();
    for (const { phone } of this.crew.helpers) {
      await this.#reads(phone);
      phone.putsRefusedAway();
      if (phone.unsent.length > 0) this.crew.faults.push(`${phone.name} still has ${phone.unsent.length} counts`);
    }
    for (const token of this.crew.endedTokens) {
      const { status } = await this.crew.line.ask({ path: "/today", token });
      if (status !== 303) this.crew.faults.push(`a session that was ended was answered ${status}`);
    }
  }

  #helper = (): Member => oneOf(this.#random, this.crew.helpers);

  async #joins(member: Member): Promise<void> {
    this.tried.joins++;
    await this.crew.joins(member);
  }

  /** Somebody who is out joins again, with all that is still on their phone. */
  async #comesBack(): Promise<void> {
    const out = this.crew.members.filter((member) => !this.crew.isIn(member));
    if (out.length > 0) await this.#joins(oneOf(this.#random, out));
  }

  async #reads(phone: FieldPhone): Promise<void> {
    this.crew.faults.push(...(await phone.readsList(this.crew.line, this.paper)));
  }

  /** A phone sends; the answer is heard, or lost on its way back, or the sending itself is late. */
  async #sends(phone: FieldPhone, way: "heard" | "lost back" | "late"): Promise<void> {
    const batch = phone.goesOut();
    if (batch.length === 0) return;
    if (way === "late") this.#late.push({ phone, batch });
    else this.#isTaken(phone, batch, await this.#ask(phone, batch), way === "heard");
  }

  /** What was late comes in, from whoever is signed in on the phone by now; sometimes a second time. */
  async #comesLate(): Promise<void> {
    if (this.#late.length === 0) return;
    const at = wholeBetween(this.#random, 0, this.#late.length - 1);
    const { phone, batch } = this.#late[at];
    this.#isTaken(phone, batch, await this.#ask(phone, batch), false);
    if (this.#random() < 0.7) this.#late.splice(at, 1);
  }

  /** All phones send at once. Counts alone: they come to the same in any order. */
  async #allSend(): Promise<void> {
    const sendings = this.crew.helpers.flatMap(({ phone }) => {
      phone.counts(this.#random);
      const batch = phone.goesOut();
      return batch.length === 0 || batch.some(({ of }) => of) ? [] : [{ phone, batch }];
    });
    const answers = await Promise.all(sendings.map(({ phone, batch }) => this.#ask(phone, batch)));
    for (const [index, { phone, batch }] of sendings.entries()) this.#isTaken(phone, batch, answers[index], true);
  }

  #ask(phone: FieldPhone, batch: Batch): Promise<Answer> {
    this.tried.sendings++;
    return this.crew.line.ask({ path: "/today/tallies", token: phone.token, json: { tallies: batch } });
  }

  /** The paper takes what the farm says it has taken, and both must refuse the same. */
  #isTaken(phone: FieldPhone, batch: Batch, { status, body }: Answer, isHeard: boolean): void {
    if (status !== (this.crew.isIn({ phone }) ? 200 : 401))
      this.crew.faults.push(`${phone.name} sent counts and was answered ${status}`);
    if (status !== 200) return;
    const { answers, revision } = JSON.parse(body.toString());
    for (const [index, tally] of batch.entries()) {
      const listAt = phone.listAt(tally.key);
      let isFree = true;
      if (tally.of) isFree = this.paper.takesBack(tally.of, phone.name, listAt);
      else this.paper.comes(tally, phone.name, listAt);
      const { key, problems } = answers[index];
      if (key !== tally.key || (problems.length === 0) !== isFree)
        this.crew.faults.push(`${tally.kind ?? "counted"} ${tally.key}: ${problems.join("; ") || "was taken"}`);
    }
    if (isHeard) phone.hears(batch, answers, revision);
  }

  /** The owner corrects a row at the machine. */
  async #isCorrected(): Promise<void> {
    const forms = await this.crew.line.forms("/today", "correctCut", this.crew.owner);
    if (forms.length === 0) return;
    const form = oneOf(this.#random, forms);
    const { cutOn = "", bedId, varietyId } = Object.fromEntries(form.fields);
    const place = placeOf({ cutOn, bedId: Number(bedId), varietyId: Number(varietyId) });
    const stems = wholeBetween(this.#random, 0, 40);
    const answer = await this.crew.line.send(form, { stemsCut: String(stems) }, { token: this.crew.owner });
    if (answer?.status !== 200 && answer?.status !== 303)
      this.crew.faults.push(`a correction was answered ${answer?.status}`);
    this.paper.corrected(place, stems);
  }

  async #trespasses(): Promise<void> {
    this.tried.trespasses++;
    await trespass(this.crew, this.#random);
  }

  /** A helper takes stems out of the cooler, a designer cancels a booking or brings it back. */
  async #doesOwnWork({ name, role, phone }: Member): Promise<void> {
    if (!this.crew.isIn({ phone })) return;
    const [path, action] =
      role === "helper"
        ? ["/farm/cooler", "moveStems"]
        : [`/bookings/${oneOf(this.#random, LATE_BOOKINGS)}`, "changeStatus"];
    const [form] = await this.crew.line.forms(path, action, phone.token);
    const answer = await this.crew.line.send(form, {}, { token: phone.token });
    if (!answer) return;
    if (answer.status >= 400) this.crew.faults.push(`${name} was answered ${answer.status} at ${path}`);
    else this.ownWork.push(name);
  }

  async #takesCopy(): Promise<void> {
    const [form] = await this.crew.line.forms("/farm/copies", "takeOne", this.crew.owner);
    await this.crew.line.send(form, {}, { token: this.crew.owner });
  }

  /** A phone was lost: all are signed out, and come back one by one, while somebody guesses at the owner's password. */
  async #allAreSignedOut(): Promise<void> {
    await this.crew.signsOutEverywhere();
    await this.crew.somebodyGuesses(`127.0.0.${100 + wholeBetween(this.#random, 0, 100)}`);
    await this.crew.ownerSignsIn();
  }
}
