/** Wrong passwords that cost nothing; after each further one its sender waits twice as long as before. */
const FREE_TRIES = 3;
const LONGEST_WAIT_SECONDS = 300;
/** Wrong passwords of all senders together in an hour: OWASP ASVS 4.0.3, 2.2.1 (from memory). */
const MOST_AN_HOUR = 100;
const HOUR_SECONDS = 3600;
const MOST_SENDERS = 1000;

/**
 * How often a password may be tried. Each sender, by its address, is slowed down for itself, so that nobody can lock others out by typing nonsense; only
 * when very many are wrong, all wait.
 *
 * @param seconds  a clock that never goes back
 */
export class SignInPace {
  readonly #seconds: () => number;
  /** Wrong tries of each sender since its last right one, and when the next may come. The one that tried last is the last. */
  readonly #senders = new Map<string, { wrongCount: number; nextAt: number }>();
  #wrongAt: number[] = [];

  constructor(seconds = () => performance.now() / 1000) {
    this.#seconds = seconds;
  }

  /** Whole seconds that a sender has to wait before it may try; 0 when it may. */
  wait(sender: string): number {
    const now = this.#seconds();
    const own = (this.#senders.get(sender)?.nextAt ?? 0) - now;
    this.#wrongAt = this.#wrongAt.filter((at) => at > now - HOUR_SECONDS);
    const ofAll = this.#wrongAt.length < MOST_AN_HOUR ? 0 : this.#wrongAt[0] + HOUR_SECONDS - now;
    return Math.max(0, Math.ceil(Math.max(own, ofAll)));
  }

  /** Notes a wrong try. */
  wrong(sender: string): void {
    const now = this.#seconds();
    const wrongCount = (this.#senders.get(sender)?.wrongCount ?? 0) + 1;
    const wait = wrongCount < FREE_TRIES ? 0 : Math.min(2 ** (wrongCount - FREE_TRIES), LONGEST_WAIT_SECONDS);
    this.#senders.delete(sender);
    this.#senders.set(sender, { wrongCount, nextAt: now + wait });
    const [oldest] = this.#senders.keys();
    if (this.#senders.size > MOST_SENDERS) this.#senders.delete(oldest);
    this.#wrongAt.push(now);
  }

  /** Forgets the wrong tries of a sender that knew the password after all. */
  right(sender: string): void {
    this.#senders.delete(sender);
  }
}
