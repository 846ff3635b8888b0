import { farmProblems, fileRefused } from "./load";

/** A route that gives a file made from the farm. Where the farm cannot be read, it says why in words, with the status of a service that is out. */
export const download =
  <A extends unknown[]>(give: (...asked: A) => Response | Promise<Response>) =>
  async (...asked: A): Promise<Response> => {
    const why = whyUnread();
    if (why === null) return give(...asked);
    return new Response(why, { status: 503, headers: { "content-type": "text/plain; charset=utf-8" } });
  };

/** Why the farm cannot be read, in words; null when it can. */
export const whyUnread = (): string | null => fileRefused()?.message ?? unreadable();

function unreadable(): string | null {
  const problems = farmProblems();
  if (problems.length === 0) return null;
  return `The farm’s records cannot be read. ${problems.map(({ place, message }) => `${place}: ${message}`).join("; ")}`;
}
