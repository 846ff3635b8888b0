/** The cookie that says who is signed in; with a certificate it is sent over an encrypted line alone. */
export const SESSION_COOKIE = "session";

/** The token in a request's cookies; null when there is none. */
export const tokenIn = (cookies: string | undefined): string | null =>
  cookies
    ?.split(";")
    .map((cookie) => cookie.trim().split("="))
    .find(([name]) => name === SESSION_COOKIE)?.[1] ?? null;

/** A request's cookies without that one; undefined when none is left. */
export const withoutToken = (cookies: string): string | undefined =>
  cookies
    .split(";")
    .filter((cookie) => cookie.trim().split("=", 1)[0] !== SESSION_COOKIE)
    .join(";")
    .trim() || undefined;
