import { SaxesParser } from "saxes";

/** What to do at the start of an element, at its end, and with the text in between. Names stand without their prefix. */
type Walk = {
  readonly open: (name: string, attributes: Readonly<Record<string, string>>) => void;
  readonly text?: (text: string) => void;
  readonly close?: (name: string) => void;
};

/**
 * Walks a part of a workbook, element by element. Throws Error where it is not well formed or comes with a document type, which no workbook
 * has: no entity but the five of XML itself is ever replaced, so that a small part cannot grow.
 */
export function walkXml(xml: string, { open, text, close }: Walk): void {
  const parser = new SaxesParser({ xmlns: false });
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("doctype", () => {
    throw new Error("a document type has no place in a workbook");
  });
  parser.on("opentag", ({ name, attributes }) => open(bare(name), attributes));
  if (text) {
    parser.on("text", text);
    parser.on("cdata", text);
  }
  if (close) parser.on("closetag", ({ name }) => close(bare(name)));
  parser.write(xml).close();
}

const bare = (name: string): string => name.slice(name.indexOf(":") + 1);

/** An attribute whatever its prefix: "id" finds "r:id". */
export const attributeIn = (attributes: Readonly<Record<string, string>>, name: string): string | undefined =>
  attributes[name] ?? Object.entries(attributes).find(([key]) => bare(key) === name)?.[1];
