import { meantLetters } from "./held-letters";
import { walkXml } from "./walk-xml";

/** The texts that cells name by their number, each with its runs joined; what is there to say how a text is spoken is left out. */
export function sharedTexts(xml: string | undefined): string[] {
  const texts: string[] = [];
  if (xml === undefined) return texts;
  let parts: string[] = [];
  let isText = false;
  let spokenDepth = 0;
  walkXml(xml, {
    open: (name) => {
      if (name === "si") parts = [];
      if (name === "rPh") spokenDepth += 1;
      isText = name === "t" && spokenDepth === 0;
    },
    text: (text) => {
      if (isText) parts.push(text);
    },
    close: (name) => {
      if (name === "si") texts.push(meantLetters(parts.join("")));
      if (name === "rPh") spokenDepth -= 1;
      isText = false;
    },
  });
  return texts;
}
