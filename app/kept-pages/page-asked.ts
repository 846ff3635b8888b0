import type { IncomingMessage } from "node:http";
import { withoutToken } from "../people/session-cookie";

/** The pages that are made of the farm's records, the address, the season chosen, the day, the reader's role, and of nothing else. */
const KEPT_ADDRESS =
  /^\/(?:$|\?|(?:bookings|beds|weeks|enquiry|what-if|keep-or-dig|picking|buying|today|farm\/cooler)(?:$|[/?]))/;

/**
 * Headers that change nothing of a page: it is the same whatever a browser accepts, and is not packed (next.config.ts). All others do, or might:
 * pages asked for with others are kept apart.
 */
const SAME_WHATEVER =
  /^(?:accept|accept-encoding|accept-language|cache-control|connection|content-security-policy|dnt|host|if-modified-since|if-none-match|origin|pragma|priority|referer|sec-.*|upgrade-insecure-requests|user-agent)$/;

/** Whether a page is asked for that may be kept. */
export const isKeptPage = ({ method, url = "" }: IncomingMessage): boolean =>
  method === "GET" && KEPT_ADDRESS.test(url);

/** A page as it can be asked for again: its address, and the headers that tell it from others, in the order of their names. */
export type PageAsked = { readonly url: string; readonly headers: Readonly<Record<string, string>> };

/** Whoever is signed in sees what all of their role see: the role is told by the door in a header of its own. */
export const pageAsked = ({ url = "", headers }: IncomingMessage): PageAsked => ({
  url,
  headers: Object.fromEntries(
    Object.entries({ ...headers, cookie: headers.cookie && withoutToken(headers.cookie) })
      .filter(([name, said]) => said !== undefined && !SAME_WHATEVER.test(name))
      .map(([name, said]) => [name, String(said)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  ),
});

/** Pages with the same key are the same page, as long as the farm stands as it does. */
export const keyOf = ({ url, headers }: PageAsked): string => JSON.stringify([url, headers]);
