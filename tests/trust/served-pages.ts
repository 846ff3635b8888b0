/** A page as it was served: its address, without the host, and its HTML. */
export type ServedPage = { readonly path: string; readonly html: string };

/** Of addresses that differ only in their numbers and days, so many are looked at. */
const OF_A_KIND = 2;
const MOST_PAGES = 200;

/** A question asked: the form that holds it stands on no page that a link leads to. */
const ENQUIRY = "/enquiry?stemCount=20&colours=blush&role=focal&eventOn=2027-09-25";

/** The pages that a reader reaches from the season by following links, whatever they are called, and an enquiry. */
export async function servedPages(address: string): Promise<ServedPage[]> {
  const pages: ServedPage[] = [];
  const seen = new Set(["/", ENQUIRY]);
  const seenOfKind = new Map<string, number>();
  for (const path of seen) {
    if (pages.length === MOST_PAGES) break;
    const kind = path.replace(/\d+/g, "0");
    const before = seenOfKind.get(kind) ?? 0;
    if (before === OF_A_KIND) continue;
    seenOfKind.set(kind, before + 1);
    const answer = await fetch(address + path);
    const isPage = answer.headers.get("content-type")?.startsWith("text/html");
    const html = await answer.text();
    if (!isPage) continue;
    pages.push({ path, html });
    for (const [, link] of html.matchAll(/\shref="(\/(?!\/|_next)[^"#]*)/g)) seen.add(link.replaceAll("&amp;", "&"));
  }
  return pages;
}
