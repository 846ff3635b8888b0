import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MOST_PARTS, partsOf } from "../../../app/door/multipart";
import { isWellFormed } from "../../../app/door/well-formed";

const KIND = "multipart/form-data; boundary=xyz";
const part = (name: string, text: string) =>
  `--xyz\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${text}\r\n`;
const form = (parts: readonly (readonly [string, string])[]) =>
  Buffer.from(`${parts.map(([name, text]) => part(name, text)).join("")}--xyz--\r\n`);

describe("a form's parts (RFC 7578)", () => {
  test("are read as the platform's own reader reads them", async () => {
    const texts = fc.array(
      fc.tuple(fc.stringMatching(/^[a-z.[\]0-9]{1,12}$/), fc.string({ unit: "grapheme", maxLength: 30 })),
      {
        maxLength: 8,
      },
    );
    await fc.assert(
      fc.asyncProperty(texts, async (entries) => {
        const sent = new FormData();
        for (const [name, text] of entries) sent.append(name, text);
        const request = new Request("http://127.0.0.1/", { method: "POST", body: sent });
        const kind = request.headers.get("content-type") ?? "";
        const parts = partsOf(kind, Buffer.from(await request.arrayBuffer()));
        const line = (text: string) => text.replace(/\r\n|\r|\n/g, "\r\n");
        expect(parts).toEqual(entries.map(([name, text]) => ({ name, text: line(text) })));
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  test("are refused when anything but a line break follows the end, or a name holds a control character", () => {
    const whole = form([["a", "1"]]);
    expect(partsOf(KIND, whole.subarray(0, -2))).not.toBe(null);
    expect(partsOf(KIND, whole.subarray(0, -1))).toBe(null);
    expect(partsOf(KIND, Buffer.concat([whole, Buffer.from("x")]))).toBe(null);
    expect(partsOf(KIND, form([["a\u0000", "1"]]))).toBe(null);
  });

  test("are refused when one says twice what it is, or says it in a way that readers do not share", () => {
    const said = (head: string) => Buffer.from(`--xyz\r\n${head}\r\n\r\n\r\n--xyz--\r\n`);
    const one = 'Content-Disposition: form-data; name="allowed"';
    expect(partsOf(KIND, said(one))).toEqual([{ name: "allowed", text: "" }]);
    for (const other of [
      'Content-Disposition: form-data; name="forbidden"',
      'Content-Disposition : form-data; name="forbidden"',
    ])
      for (const head of [`${one}\r\n${other}`, `${other}\r\n${one}`]) expect(partsOf(KIND, said(head))).toBe(null);
    expect(partsOf(KIND, said('Content-Disposition : form-data; name="allowed"'))).toBe(null);
  });

  test.each(["null", "-1", "{}", '"a"'])(
    "that call an action with %s, which is no list of anything, are refused",
    (row) => {
      expect(isWellFormed(KIND, true, form([["0", row]]))).toBe(false);
      expect(isWellFormed(KIND, true, form([["0", '[{"kind":"none"},"$K1"]']]))).toBe(true);
      expect(isWellFormed(KIND, true, form([["0", "[]"]]))).toBe(true);
    },
  );

  test("are refused when the form is cut off anywhere", () => {
    const whole = form([
      ["a", "1"],
      ["b", "two\r\n--xy"],
    ]);
    expect(partsOf(KIND, whole)).toEqual([
      { name: "a", text: "1" },
      { name: "b", text: "two\r\n--xy" },
    ]);
    for (let length = 0; length < whole.length; length++)
      if (length !== whole.length - 2) expect(partsOf(KIND, whole.subarray(0, length))).toBe(null);
  });

  test.each([
    "",
    "garbage",
    "--xyz",
    "--xyz\r\n--xyz--",
    "--xyz\r\nContent-Disposition: form-data\r\n\r\nx\r\n--xyz--",
  ])("are refused when it is “%s”", (body) => {
    expect(partsOf(KIND, Buffer.from(body))).toBe(null);
  });

  test("are at most ten thousand", () => {
    const many = form(Array.from({ length: MOST_PARTS + 1 }, (_, index) => [`p${index}`, ""] as const));
    expect(partsOf(KIND, many)).toBe(null);
  });
});

describe("a form's call (ASVS 5.5.1 and 5.5.3, from memory)", () => {
  test("passes as our pages send it: the state before, then the form", () => {
    const sent = [
      ["1_client", "$1:__proto__ is what she typed"],
      ["0", '["$undefined","$K1"]'],
    ] as const;
    expect(isWellFormed(KIND, true, form(sent))).toBe(true);
    expect(
      isWellFormed(
        KIND,
        true,
        form([
          ["1", '{"kind":"none"}'],
          ["0", '["$1","$K2","$$5"]'],
        ]),
      ),
    ).toBe(true);
    expect(isWellFormed("text/plain;charset=UTF-8", true, Buffer.from('[null,{"client":"x"}]'))).toBe(true);
    expect(
      isWellFormed(
        KIND,
        false,
        form([
          ["$ACTION_ID_ab", ""],
          ["bookingId", "1"],
        ]),
      ),
    ).toBe(true);
    const bound = [
      ["$ACTION_REF_1", ""],
      ["$ACTION_1:0", '{"id":"ab","bound":"$@1"}'],
      ["$ACTION_1:1", "[{}]"],
    ] as const;
    expect(isWellFormed(KIND, false, form(bound))).toBe(true);
  });

  test.each([
    '["$1:__proto__:then"]',
    '["$1:constructor:constructor"]',
    '["$1:a:prototype"]',
    '["$7"]',
    '["$@7"]',
    '["$B1"]',
    '["$h1"]',
    '["$T"]',
    '["$n99999999999999"]',
    '["$A1"]',
    '["$r1"]',
    '["$X1"]',
    '[{"then":"$1"}]',
    '[{"__proto__":{"x":1}}]',
    '["$1:a',
    "",
    `${"[".repeat(200_000)}`,
    `${"[".repeat(100_000)}${"]".repeat(100_000)}`,
  ])("is refused when it says %.40s", (row) => {
    expect(
      isWellFormed(
        KIND,
        true,
        form([
          ["1", '{"a":{}}'],
          ["0", row],
        ]),
      ),
    ).toBe(false);
  });

  test.each(["null", "[]", "{}", '"x"'])(
    "that the browser sends by itself is refused when its state before is %s",
    (state) => {
      const bound = [
        ["$ACTION_REF_1", ""],
        ["$ACTION_1:0", '{"id":"ab","bound":"$@1"}'],
        ["$ACTION_1:1", state],
      ] as const;
      expect(isWellFormed(KIND, false, form(bound))).toBe(false);
    },
  );

  test("is refused without its first row, and as text without an action", () => {
    expect(isWellFormed(KIND, true, form([["1_client", "x"]]))).toBe(false);
    expect(isWellFormed("text/plain", false, Buffer.from("[]"))).toBe(false);
  });
});
