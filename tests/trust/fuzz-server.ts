import { oneOf, type RandomSource, wholeBetween } from "#lib/maths/random";
import { knock, type Said } from "../app/door/knock";
import { formsOf, type PageForm } from "./forms-of";
import { builtActions, oddCall, SCRIPT_CALLS } from "./odd-calls";
import { mangled, oddText } from "./odd-inputs";
import { oddUpload, type Sheet } from "./odd-uploads";
import { servedPages } from "./served-pages";

/** Addresses of the tool, the odd value at the "~" of each. */
const ADDRESSES = [
  "/",
  "/?role=~",
  "/?all=~",
  "/weeks/~",
  "/bookings",
  "/bookings/~",
  "/bookings/new?copy=~",
  "/bookings/new?on=~",
  "/beds?crop=~",
  "/beds/~",
  "/keep-or-dig/worksheet?day=~",
  "/what-if?compare=~",
  "/what-if/~",
  "/what-if/~?adopted=~",
  "/dates?on=~",
  "/enquiry?stemCount=~&colours=~&role=~&eventOn=~",
  "/enquiry?eventOn=2027-09-18&stemCount=~",
  "/enquiry?held=~",
  "/enquiry?eventOn=~",
  "/enquiry?stemCount=120&eventOn=2027-06-19&colours=~",
  "/today?day=~",
  "/picking?day=~",
  "/picking?week=~",
  "/picking/print?booking=~",
  "/picking/labels?week=~",
  "/picking/csv?day=~",
  "/picking/csv?week=~",
  "/buying?from=~",
  "/farm/crops/~",
  "/farm/recipes/~",
  "/farm/files/sheet/~",
  "/farm/history?refused=~",
  "/farm/people",
  "/join/~",
  "/calendar/~",
  "/sign-in",
  "/~",
];
const BEDS = '{"seasonYear":2027,"keptBedIds":[1]}';
const TALLIES = JSON.stringify({
  tallies: [
    {
      ...{ key: "12345678", cutOn: "2027-06-10", bedId: 1, varietyId: 1, asked: [[1, 9]] },
      ...{ stemsCut: 9, seenStems: 0, seenRevision: 1, countedAt: "2027-06-10T05:40:00Z" },
    },
  ],
});
/** Each with a question that it takes as it stands. */
export const JSON_DOORS: readonly (readonly [path: string, question: string])[] = [
  ["/bookings/coverage", '{"bookingId":1,"form":{}}'],
  ["/enquiry/answer", '{"form":{"stemCount":"120","colours":"blush, cream","role":"focal","eventOn":"2027-06-19"}}'],
  ["/today/tallies", TALLIES],
  ["/keep-or-dig/try", BEDS],
  ["/keep-or-dig/stop", '{"workId":1}'],
  ["/farm/files/all", BEDS],
  ["/farm/what-changed/effects", '{"seasonYear":2027}'],
  ["/~", BEDS],
];
/** As a browser makes one up: it stands nowhere in what is sent. */
const BOUNDARY = "----OddFormBoundary7MA4YWxkTrZu0gW";
const ANSWER_MS = 60_000;

/** One odd thing sent to a running server: what was sent, and what came back. */
export type OddKnock = { readonly sent: string; readonly said: Said };

type OddKnocks = {
  readonly knock: (random: RandomSource) => Promise<OddKnock>;
  /** Forms found, and the pages they stand on. */
  readonly formCount: number;
  readonly formPageCount: number;
};

/** The fewest pages with forms of their own that the demo farm has: were fewer found, the crawl would be at fault. */
const FEWEST_FORM_PAGES = 25;

/**
 * Sends odd requests to the server at `port`: raw ones, odd addresses, odd JSON, every form of every page that links lead to, filled oddly,
 * every action called as scripts do, and odd sheets.
 */
export async function oddKnocks(port: number, sheets: readonly Sheet[]): Promise<OddKnocks> {
  const own = `Host: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nConnection: close\r\n`;
  const send = async (bytes: string | Buffer): Promise<OddKnock> => ({
    sent: bytes.toString("latin1"),
    said: await knock(port, Buffer.from(bytes), ANSWER_MS),
  });
  const post = (path: string, kind: string, content: string | Buffer) => {
    const body = Buffer.from(content);
    const head = `POST ${path} HTTP/1.1\r\n${own}Content-Type: ${kind}\r\nContent-Length: ${body.length}\r\n\r\n`;
    return send(Buffer.concat([Buffer.from(head), body]));
  };
  const site = `http://127.0.0.1:${port}`;
  const forms = (await servedPages(site)).flatMap(({ path, html }) => formsOf(path, html));
  const formPageCount = new Set(forms.map(({ path }) => path)).size;
  if (formPageCount < FEWEST_FORM_PAGES) throw new Error(`only ${formPageCount} pages with forms were found`);
  const actions = builtActions();
  const scripted = actions.filter(({ name }) => name in SCRIPT_CALLS);
  const upload = actions.find(({ name }) => name === "bringIn");

  const ways: ((random: RandomSource) => Promise<OddKnock>)[] = [
    (random) => send(`GET ${address(random, oneOf(random, ADDRESSES))} HTTP/1.1\r\n${own}\r\n`),
    (random) => send(`${mangled(random, `GET /bookings?x=1 HTTP/1.1\r\n${own}Cookie: season=2027`)}\r\n\r\n`),
    (random) => {
      const [path, question] = oneOf(random, JSON_DOORS);
      return post(address(random, path), "application/json", mangled(random, question));
    },
    (random) => {
      const { path, fields } = oneOf(random, forms);
      return post(path, `multipart/form-data; boundary=${BOUNDARY}`, oddForm(random, fields));
    },
    (random) =>
      post(
        "/farm/files",
        `multipart/form-data; boundary=${BOUNDARY}\r\nAccept: text/x-component\r\nNext-Action: ${upload?.id}`,
        oddUpload(random, sheets, BOUNDARY),
      ),
    (random) => {
      const { path, name, id } = oneOf(random, random() < 0.7 ? scripted : actions);
      const { kind, body } = oddCall(random, name, BOUNDARY);
      return post(path, `${kind}\r\nAccept: text/x-component\r\nNext-Action: ${id}`, body);
    },
  ];
  return { knock: (random) => oneOf(random, ways)(random), formCount: forms.length, formPageCount };
}

const address = (random: RandomSource, pattern: string): string =>
  pattern.replaceAll("~", () =>
    random() < 0.8
      ? encodeURIComponent(Buffer.from(oddText(random)).toString())
      : oddText(random).replace(/[\s\0]/g, ""),
  );

/** A form with some fields odd, lost or doubled, and sometimes cut off. */
function oddForm(random: RandomSource, fields: PageForm["fields"]): string {
  const parts = fields.flatMap(([name, text]) => {
    if (name.startsWith("$ACTION") && random() < 0.95) return [[name, text]];
    const chance = random();
    if (chance < 0.1) return [];
    return [...(chance < 0.15 ? [[name, text]] : []), [name, chance < 0.6 ? text : oddField(random, name)]];
  });
  const body = `${parts.map(([name, text]) => `--${BOUNDARY}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${text}\r\n`).join("")}--${BOUNDARY}--\r\n`;
  return random() < 0.05 ? body.slice(0, wholeBetween(random, 0, body.length)) : body;
}

/** No way from the top of the disk for a folder: copies would be put there, on the machine that runs this. */
const oddField = (random: RandomSource, name: string): string =>
  name === "folder" ? oddText(random).replace(/^\/+/, "") : oddText(random);
