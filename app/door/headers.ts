/**
 * What every answer tells the browser to refuse. Scripts run only with the nonce of their own answer, or when such a script loads them; styles
 * only from the tool's own files, with no style attributes; nothing loads from, posts to or is framed by another site.
 *
 * @param nonce  a new one for each answer
 * @param isDev  whether this is the server for contributors, whose tools evaluate text and reload by a socket
 */
export const contentPolicy = (nonce: string, isDev = false): string =>
  [
    "default-src 'none'",
    `script-src 'nonce-${nonce}' 'strict-dynamic'${isDev ? " 'unsafe-eval'" : ""}`,
    isDev ? "style-src 'self' 'unsafe-inline'" : `style-src 'self' 'nonce-${nonce}'`,
    ...(isDev ? [] : ["style-src-attr 'none'"]),
    "img-src 'self' data:",
    "font-src 'self'",
    `connect-src 'self'${isDev ? " ws:" : ""}`,
    "manifest-src 'self'",
    "worker-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

/** Headers that every answer carries beside the policy. */
export const ANSWER_HEADERS: Readonly<Record<string, string>> = {
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "same-origin",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), microphone=(), geolocation=(), payment=(), usb=(), browsing-topics=()",
};

/**
 * Whether a request header is dropped before the screens see it: those by which a proxy, or the framework itself, would speak. Nobody stands in
 * front of the door, so whoever sends them is not who they claim.
 */
export const isUntrue = (name: string): boolean =>
  name.startsWith("x-") || name === "forwarded" || name.startsWith("content-security-policy");
