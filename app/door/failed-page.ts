import type { RequestListener, ServerResponse } from "node:http";
import { FAILED } from "../frame/failed-words";

const links = FAILED.ways.map(({ href, name }) => `<a href="${href}">${name}</a>`).join(" · ");
const WORDS = `<noscript><main><h1>${FAILED.title}</h1><p>${FAILED.what}</p><p><a href="">Try again</a> · ${links}</p></main></noscript>`;
const BODY = /<body[^>]*>/;

/**
 * The screens, with words on a page that failed also for browsers without scripts: the framework leaves such a page empty until its scripts have
 * drawn the words.
 */
export const failedInWords =
  (screens: RequestListener): RequestListener =>
  (request, response) => {
    const { write, end } = response;
    let isBegun = false;
    const withWords = (chunk: unknown): unknown => {
      if (isBegun) return chunk;
      isBegun = true;
      if (!isFailedPage(response) || !(typeof chunk === "string" || chunk instanceof Uint8Array)) return chunk;
      return Buffer.from(
        Buffer.from(chunk)
          .toString("utf8")
          .replace(BODY, (body) => body + WORDS),
      );
    };
    Object.assign(response, {
      write: (chunk: unknown, ...rest: unknown[]) => Reflect.apply(write, response, [withWords(chunk), ...rest]),
      end: (chunk: unknown, ...rest: unknown[]) => Reflect.apply(end, response, [withWords(chunk), ...rest]),
    });
    screens(request, response);
  };

/** Its length must not have been promised yet. */
const isFailedPage = (response: ServerResponse): boolean =>
  response.statusCode >= 500 &&
  String(response.getHeader("content-type") ?? "").startsWith("text/html") &&
  !response.hasHeader("content-length");
