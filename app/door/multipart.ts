/** A part of a form as it was sent: its name and, unless it is a file, its text. */
export type Part = { readonly name: string; readonly text: string | null };

/** More parts than any form of the tool has; beyond that a body is not looked at further. */
export const MOST_PARTS = 10_000;

/**
 * The parts of a multipart body in their order, or null when it is not whole: a boundary that is missing, a part without a name, no end. One walk
 * through the body. Source: RFC 7578, https://www.rfc-editor.org/rfc/rfc7578 (form data) and RFC 2046 section 5.1.1 (boundaries).
 *
 * @param contentType  the header that names the boundary
 */
export function partsOf(contentType: string, body: Buffer): Part[] | null {
  const [, quoted, plain] = /boundary=(?:"([^"]{1,70})"|([^\s;"]{1,70}))/i.exec(contentType) ?? [];
  const boundary = quoted ?? plain;
  if (!boundary || !body.subarray(0, boundary.length + 2).equals(Buffer.from(`--${boundary}`))) return null;
  const mark = Buffer.from(`\r\n--${boundary}`);
  const parts: Part[] = [];
  let at = boundary.length + 2;
  while (parts.length <= MOST_PARTS) {
    const after = body.toString("latin1", at, at + 2);
    // Readers differ in what may come after the end; browsers send a line break, or nothing.
    if (after === "--") return ["", "\r\n"].includes(body.toString("latin1", at + 2)) ? parts : null;
    const end = after === "\r\n" ? body.indexOf(mark, at) : -1;
    const inside = body.subarray(at + 2, Math.max(end, at + 2));
    // Browsers make up a boundary that stands nowhere else; the framework's reader looks for it anywhere.
    const part = end < 0 || inside.includes(boundary) ? null : partIn(inside);
    if (!part) return null;
    parts.push(part);
    at = end + mark.length;
  }
  return null;
}

/** No line of a part's head has any, apart from the breaks between them. */
const CONTROL = /[^\P{Cc}\r\n\t]/u;

function partIn(bytes: Buffer): Part | null {
  const headEnd = bytes.indexOf("\r\n\r\n");
  if (headEnd < 0) return null;
  const head = bytes.toString("utf8", 0, headEnd);
  // Readers differ in which of two they take, and in what they make of one written otherwise.
  const said = head.split("\r\n").filter((line) => /^[ \t]*content-disposition[ \t]*:/i.test(line));
  const disposition = said.length === 1 && /^content-disposition: *form-data *;/i.test(said[0]) ? said[0] : undefined;
  const name = disposition && /; *name="([^"]*)"/i.exec(disposition)?.[1];
  if (name === undefined || name === "" || CONTROL.test(head)) return null;
  return { name, text: /; *filename\*?=/i.test(head) ? null : bytes.toString("utf8", headEnd + 4) };
}
