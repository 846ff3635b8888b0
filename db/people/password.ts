import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from "node:crypto";

/**
 * The least cost of scrypt that the OWASP Password Storage Cheat Sheet names, https://cheatsheetseries.owasp.org/cheatsheets/Password_Storage_Cheat_Sheet.html:
 * N = 2^17 (128 MiB), r = 8, p = 1. From memory.
 */
const COST = { N: 2 ** 17, r: 8, p: 1 } as const;
const KEY_BYTES = 32;
const SALT_BYTES = 16;

/** Letters of a password. The fewest are those of OWASP ASVS 4.0.3, 2.1.1 (from memory); no other rule makes a password better than length does. */
export const PASSWORD_LETTERS = { fewest: 12, most: 128 } as const;

/** Why a text is no password for a farm, in words; null when it can be one. */
export function passwordProblem(password: string): string | null {
  const { length } = [...password];
  if (length < PASSWORD_LETTERS.fewest)
    return `a password has ${PASSWORD_LETTERS.fewest} letters or more: a few words that nobody would put together are easy to keep in mind`;
  if (length > PASSWORD_LETTERS.most) return `a password has ${PASSWORD_LETTERS.most} letters at the most`;
  return new Set(password).size < 5 ? "these letters are nearly all the same: take some words" : null;
}

/** What is kept of a password: from it nobody can tell the password but by trying. Takes about half a second and 128 MiB. */
export async function hashOf(password: string): Promise<string> {
  const salt = randomBytes(SALT_BYTES);
  const key = await keyOf(password, salt, COST);
  return ["scrypt", COST.N, COST.r, COST.p, salt.toString("base64url"), key.toString("base64url")].join(" ");
}

/** Whether a password is the one that was kept. As slow as {@link hashOf}. */
export async function isPassword(password: string, kept: string): Promise<boolean> {
  const [kind, N, r, p, salt, key] = kept.split(" ");
  if (kind !== "scrypt" || !key) return false;
  const tried = await keyOf(password, Buffer.from(salt, "base64url"), { N: Number(N), r: Number(r), p: Number(p) });
  const known = Buffer.from(key, "base64url");
  return tried.length === known.length && timingSafeEqual(tried, known);
}

/** The same letters give the same key however the keyboard composes them (NFKC, as NIST SP 800-63B 5.1.1.2 has it). */
const keyOf = (password: string, salt: Buffer, cost: Pick<ScryptOptions, "N" | "r" | "p">): Promise<Buffer> =>
  new Promise((resolve, reject) =>
    scrypt(password.normalize("NFKC"), salt, KEY_BYTES, { ...cost, maxmem: 256 * 2 ** 20 }, (error, key) =>
      error ? reject(error) : resolve(key),
    ),
  );
