import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, test } from "vitest";
import { failedInWords } from "../../../app/door/failed-page";

/** What a reader gets of an answer of the screens. */
async function answered(status: number, type: string, parts: readonly string[]): Promise<string> {
  const server = createServer(
    failedInWords((_, response) => {
      response.statusCode = status;
      response.setHeader("content-type", type);
      for (const part of parts) response.write(part);
      response.end();
    }),
  );
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const text = await (await fetch(`http://127.0.0.1:${port}/`)).text();
  server.close();
  return text;
}

const EMPTY = ['<html id="e"><body class="x">', "<script>draw()</script></body>", "</html>"];

test("a page that failed says so before any script has run, and keeps all that it was", async () => {
  const text = await answered(500, "text/html; charset=utf-8", EMPTY);
  expect(text).toContain('<body class="x"><noscript><main><h1>This page could not be made</h1>');
  expect(text.replace(/<noscript>.*<\/noscript>/, "")).toBe(EMPTY.join(""));
});

test("a page that was made, and a failed answer that is no page, pass as they are", async () => {
  expect(await answered(200, "text/html", EMPTY)).toBe(EMPTY.join(""));
  expect(await answered(500, "application/json", ['{"of":"<body>"}'])).toBe('{"of":"<body>"}');
});
