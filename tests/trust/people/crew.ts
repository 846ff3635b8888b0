import type { HiredRole } from "#lib/domain/people";
import type { PageForm } from "../forms-of";
import { type FarmLine, formsIn, tokenFrom } from "./farm-line";
import { FieldPhone } from "./field-phone";

/** Somebody who works with the farm, with a phone; whether anything is counted on it or not. */
export type Member = { readonly name: string; readonly role: HiredRole; readonly phone: FieldPhone };

const NAMES: readonly (readonly [string, HiredRole])[] = [
  ["Wren", "helper"],
  ["Robin", "helper"],
  ["Teal", "designer"],
  ["Finch", "helper"],
  ["Plover", "designer"],
  ["Lark", "helper"],
];

/**
 * The owner at the machine, and the people of the farm, who come in, are put out and come back. All goes by the forms of the pages, as a browser without
 * scripts sends them. Keeps every secret that was ever given, and what is wrong with how the farm answered.
 */
export class Crew {
  readonly line: FarmLine;
  readonly members: readonly Member[];
  readonly faults: string[] = [];
  readonly secrets = new Set<string>();
  /** Sessions that have ended: nobody may come in by them again. */
  readonly endedTokens = new Set<string>();
  owner = "";
  readonly #password: string;

  /** @param size  people beside the owner, six at the most */
  constructor(line: FarmLine, password: string, size: number) {
    this.line = line;
    this.members = NAMES.slice(0, size).map(([name, role]) => ({ name, role, phone: new FieldPhone(name) }));
    this.#password = password;
    this.secrets.add(password);
  }

  /** Whether somebody is signed in, as far as the farm has said. */
  isIn = ({ phone: { token } }: Pick<Member, "phone">): boolean => token !== null && !this.endedTokens.has(token);

  get helpers(): readonly Member[] {
    return this.members.filter(({ role }) => role === "helper");
  }

  /** The owner signs in at the desk, whatever somebody elsewhere is guessing. */
  async ownerSignsIn(): Promise<void> {
    const [form] = await this.line.forms("/sign-in", "signIn", null);
    const answer = await this.line.send(form, { password: this.#password }, { token: null });
    const token = answer && tokenFrom(answer);
    if (!token) throw new Error(`the owner was not let in: ${answer?.status}`);
    this.owner = token;
    this.secrets.add(token);
  }

  /** Somebody on the network guesses, and is made to wait, even with the right password by then. */
  async somebodyGuesses(from: string): Promise<void> {
    for (const guess of ["three hens", "three hens and a hero", "", this.#password.toUpperCase(), this.#password]) {
      if (guess !== "") this.secrets.add(guess);
      const [form] = await this.line.forms("/sign-in", "signIn", null);
      const answer = await this.line.send(form, { password: guess }, { token: null, from });
      const isLast = guess === this.#password;
      if (!answer || tokenFrom(answer) || answer.status !== 200)
        this.faults.push(`a guess was answered ${answer?.status}, ${isLast ? "right, and too soon" : "wrong"}`);
      if (isLast && !answer?.body.toString().includes("too many wrong tries"))
        this.faults.push("whoever guesses is not made to wait");
    }
  }

  /** Takes somebody on, if they are not, and has their phone join. Where the line breaks nobody knows whether the code was used: then all is done again. */
  async joins({ name, role, phone }: Member): Promise<void> {
    if (!(await this.#personForm(name, "invite"))) await this.#hires(name, role);
    const link = await this.invitation(name);
    if (phone.token) this.endedTokens.add(phone.token);
    const [form] = await this.line.forms(link, "join", null);
    const answer = await this.line.send(form, {}, { token: null });
    const token = answer && tokenFrom(answer);
    if (!token) return void this.faults.push(`${name} could not join: ${answer?.status}`);
    this.secrets.add(token);
    phone.token = token;
    if (await this.isGood(link)) this.faults.push("a code can be used a second time");
  }

  /** A code for somebody's phone; codes they had before end. */
  async invitation(name: string): Promise<string> {
    const answer = await this.line.send(await this.#personForm(name, "invite"), {}, { token: this.owner });
    const link = /\/join\/([\w-]+)/.exec(answer?.body.toString() ?? "");
    if (!link) throw new Error(`no code for ${name}: ${answer?.status}`);
    this.secrets.add(link[1]);
    return link[0];
  }

  /** Whether a code still lets somebody in. */
  async isGood(link: string): Promise<boolean> {
    return (await this.line.forms(link, "join", null)).length > 0;
  }

  /** Ends what somebody may do, with a code of theirs that is still to be used; nothing where they are ended already. */
  async ends({ name, phone }: Member): Promise<void> {
    if (!(await this.#personForm(name, "end"))) return;
    const link = await this.invitation(name);
    await this.line.send(await this.#personForm(name, "end"), {}, { token: this.owner });
    if (phone.token) this.endedTokens.add(phone.token);
    if (await this.isGood(link)) this.faults.push(`${name} was ended, and a code of theirs still lets in`);
  }

  async signsOutEverywhere(): Promise<void> {
    const [form] = await this.line.forms("/farm/people", "signOutEverywhere", this.owner);
    await this.line.send(form, {}, { token: this.owner });
    for (const token of [this.owner, ...this.members.map(({ phone }) => phone.token)])
      if (token) this.endedTokens.add(token);
  }

  /** An address of the calendar, which ends the one before. */
  async sharesCalendar(): Promise<void> {
    const [form] = await this.line.forms("/farm/people", "newCalendar", this.owner);
    const answer = await this.line.send(form, {}, { token: this.owner });
    const key = /\/calendar\/([\w-]+)/.exec(answer?.body.toString() ?? "")?.[1];
    if (!key) return void this.faults.push("no address of the calendar was made");
    this.secrets.add(key);
    const read = await this.line.ask({ path: `/calendar/${key}` });
    if (read.status !== 200) this.faults.push(`the calendar was answered ${read.status}`);
  }

  async #hires(name: string, role: HiredRole): Promise<void> {
    const [form] = await this.line.forms("/farm/people", "hire", this.owner);
    await this.line.send(form, { name, role }, { token: this.owner });
  }

  /** The form of a person's row; a row is told by the name that its buttons say. */
  async #personForm(name: string, action: "invite" | "end"): Promise<PageForm | undefined> {
    const { body } = await this.line.ask({ path: "/farm/people", token: this.owner });
    const row = new RegExp(`name="personId" value="(\\d+)"[^>]*>\\s*<button[^>]*aria-label="[^"]*: ${name}"`);
    const [, id] = row.exec(body.toString()) ?? [];
    const forms = formsIn(body, "/farm/people", this.line.idOf(action));
    return forms.find(({ fields }) => fields.some(([field, text]) => field === "personId" && text === id));
  }
}
