import { createHash, randomBytes } from "node:crypto";
import { isPassword } from "#db/people/password";
import { PeopleFile } from "#db/people/people-file";
import { type HiredRole, type PeopleKept, seenName } from "#lib/domain/people";
import { now } from "../clock";
import { SignInPace } from "./sign-in-pace";

/** Somebody who is signed in. The owner has the number 0. */
export type Person = { readonly id: number; readonly name: string; readonly role: "owner" | HiredRole };

/** A helper or designer as the owner sees them: `isIn` when a phone is signed in as them, `isAwaited` when a code of theirs can still be used. */
export type Hired = Person & { readonly isIn: boolean; readonly isAwaited: boolean };

type SignedIn = { readonly ok: true; readonly token: string } | { readonly ok: false; readonly problem: string };

const OWNER: Person = { id: 0, name: "owner", role: "owner" };
const DAY_SECONDS = 86_400;
/** After so long everybody signs in anew: OWASP ASVS 4.0.3, 3.3.2, level 1 (from memory). */
export const SESSION_SECONDS = 30 * DAY_SECONDS;
/** So long a code on the owner's screen can be used. */
export const CODE_MINUTES = 15;
/** Passwords that wait to be tried: each takes half a second and 128 MiB, one at a time. */
const MOST_WAITING = 8;

/**
 * The people of a farm that is open to its network: who they are, who is signed in, and how one gets in. Tokens and codes have 256 bits of chance, of
 * which a plain hash says nothing.
 *
 * @param farmFile  the farm's own file; the people's lies beside it
 */
export class People {
  readonly #file: PeopleFile;
  readonly #pace: SignInPace;
  readonly #now: typeof now;
  #trying: Promise<unknown> = Promise.resolve();
  #waitingCount = 0;

  constructor(farmFile: string, pace = new SignInPace(), clock = now) {
    this.#file = new PeopleFile(farmFile);
    this.#pace = pace;
    this.#now = clock;
  }

  get hasPassword(): boolean {
    return this.#file.read().ownerPassword !== null;
  }

  /** Who carries this token; null when nobody does any more. */
  whoHas(token: string): Person | null {
    const kept = this.#file.read();
    const tokenHash = hashOf(token);
    const session = kept.sessions.find((one) => one.tokenHash === tokenHash && one.until > this.#now());
    return session ? personIn(kept, session.personId) : null;
  }

  /** Tries the owner's password. @param sender  the address it comes from */
  async signIn(password: string, sender: string): Promise<SignedIn> {
    const wait = this.#pace.wait(sender);
    if (wait > 0)
      return { ok: false, problem: `too many wrong tries: wait ${wait} ${wait === 1 ? "second" : "seconds"}` };
    if (this.#waitingCount >= MOST_WAITING) return { ok: false, problem: "many try to sign in at once: try again" };
    const problem = await this.#inTurn(async () => {
      // Of many sent at once, those that were wrong meanwhile count.
      if (this.#pace.wait(sender) > 0) return "too many wrong tries: wait a little";
      if (await isPassword(password, this.#file.read().ownerPassword ?? "")) return null;
      this.#pace.wrong(sender);
      return "this is not the owner’s password";
    });
    if (problem !== null) return { ok: false, problem };
    this.#pace.right(sender);
    return { ok: true, token: this.#begin(0) };
  }

  /** Whom a code is for, without using it up; null when it is used, over or none. */
  invited(code: string): Person | null {
    const kept = this.#file.read();
    const found = this.#invitation(kept, code);
    return found ? personIn(kept, found.personId) : null;
  }

  /** Signs in whoever has the code, once. A phone that was signed in as the same person is signed out: each has one. */
  join(code: string): string | null {
    const found = this.#invitation(this.#file.read(), code);
    return found ? this.#begin(found.personId) : null;
  }

  hired(): Hired[] {
    const kept = this.#file.read();
    const at = this.#now();
    const isOpen = (rows: readonly { personId: number; until: string }[], id: number) =>
      rows.some(({ personId, until }) => personId === id && until > at);
    return kept.people
      .filter(({ isEnded }) => !isEnded)
      .map(({ id, name, role }) => ({
        ...{ id, name, role },
        isIn: isOpen(kept.sessions, id),
        isAwaited: isOpen(kept.invitations, id),
      }));
  }

  /**
   * Takes somebody on, or on again: who was ended comes back under the same name. The history says who did what by name, so that two who work here at
   * once cannot have the same.
   */
  hire(name: string, role: HiredRole): { readonly id: number } | { readonly problem: string } {
    const { people } = this.#file.read();
    const isSame = (one: { readonly name: string }) => seenName(one.name) === seenName(name);
    const before = people.find(isSame);
    if (isSame(OWNER) || before?.isEnded === false)
      return { problem: "somebody here has this name: the history could not tell them apart" };
    const id = before?.id ?? Math.max(0, ...people.map((one) => one.id)) + 1;
    const others = people.filter((one) => one.id !== id);
    this.#file.write((kept) => ({ ...kept, people: [...others, { id, name, role, isEnded: false }] }));
    return { id };
  }

  /** A code for one phone of a helper or designer; codes they had before end. Null when there is no such person. */
  invite(personId: number): string | null {
    if (!this.hired().some(({ id }) => id === personId)) return null;
    const code = chance();
    const until = this.#now(CODE_MINUTES * 60);
    this.#file.write((kept) => ({
      ...kept,
      invitations: [...kept.invitations.filter(notOf(personId)), { codeHash: hashOf(code), personId, until }],
    }));
    return code;
  }

  /** Ends what a helper or designer may do, at once. */
  end(personId: number): void {
    this.#file.write((kept) => ({
      ...kept,
      people: kept.people.map((one) => (one.id === personId ? { ...one, isEnded: true } : one)),
      sessions: kept.sessions.filter(notOf(personId)),
      invitations: kept.invitations.filter(notOf(personId)),
    }));
  }

  signOut(token: string): void {
    const tokenHash = hashOf(token);
    this.#file.write((kept) => ({
      ...kept,
      sessions: kept.sessions.filter((session) => session.tokenHash !== tokenHash),
    }));
  }

  /** Signs everybody out, on every device, and ends every code and the calendar's address. */
  signOutEverywhere(): void {
    this.#file.write((kept) => ({ ...kept, sessions: [], invitations: [], calendarHash: null }));
  }

  /** A key for the address of the season's calendar; the one before ends. */
  newCalendar(): string {
    const key = chance();
    this.#file.write((kept) => ({ ...kept, calendarHash: hashOf(key) }));
    return key;
  }

  endCalendar(): void {
    this.#file.write((kept) => ({ ...kept, calendarHash: null }));
  }

  get hasCalendar(): boolean {
    return this.#file.read().calendarHash !== null;
  }

  isCalendar(key: string): boolean {
    return this.#file.read().calendarHash === hashOf(key);
  }

  #begin(personId: number): string {
    const token = chance();
    const session = { tokenHash: hashOf(token), personId, until: this.#now(SESSION_SECONDS) };
    const at = this.#now();
    this.#file.write((kept) => ({
      ...kept,
      sessions: [
        ...kept.sessions.filter((one) => one.until > at && (personId === 0 || one.personId !== personId)),
        session,
      ],
      invitations: kept.invitations.filter((one) => one.until > at && one.personId !== personId),
    }));
    return token;
  }

  #invitation({ invitations }: PeopleKept, code: string) {
    const codeHash = hashOf(code);
    return invitations.find((one) => one.codeHash === codeHash && one.until > this.#now());
  }

  /** One at a time, in their order. */
  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    this.#waitingCount++;
    const done = this.#trying.then(work).finally(() => this.#waitingCount--);
    this.#trying = done.catch(() => null);
    return done;
  }
}

const notOf =
  (personId: number) =>
  (one: { readonly personId: number }): boolean =>
    one.personId !== personId;

function personIn({ people }: PeopleKept, personId: number): Person | null {
  if (personId === 0) return OWNER;
  const found = people.find(({ id, isEnded }) => id === personId && !isEnded);
  return found ? { id: found.id, name: found.name, role: found.role } : null;
}

const chance = (): string => randomBytes(32).toString("base64url");

const hashOf = (secret: string): string => createHash("sha256").update(secret).digest("base64url");
