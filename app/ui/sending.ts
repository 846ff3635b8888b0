/** Hidden fields that say of a form how it was sent; a leading "$" keeps them out of what was typed. */

/** The same for every try of one sending, until it was answered. */
export const SAVE_KEY = "$saveKey";

/** The farm's last change when what the form shows was read. */
export const REVISION = "$revision";

/** Long enough that no two sendings ever have the same; drawn here because `randomUUID` is not there on a farm's own network without https. */
export const newKey = (): string => crypto.getRandomValues(new Uint32Array(4)).join("-");

/**
 * The keys of one form's sendings. What is sent twice before an answer came has one key, as a double click has; two contents sent shortly after one
 * another have two. After a sending that got no answer the next has its key, whatever it says: it is refused in words should the first have landed.
 */
export class SaveKeys {
  readonly #underWay = new Map<string, string>();
  #lost: string | null = null;

  keyOf(content: string): string {
    const key = this.#lost ?? this.#underWay.get(content) ?? newKey();
    this.#underWay.set(content, key);
    return key;
  }

  /** Says whether an answer came to what was sent. */
  settle(content: string, isAnswered: boolean): void {
    const key = this.#underWay.get(content) ?? null;
    this.#underWay.delete(content);
    if (!isAnswered) this.#lost = key;
    else if (this.#lost === key) this.#lost = null;
  }
}
