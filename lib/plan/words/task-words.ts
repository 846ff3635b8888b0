import type { WinterTask } from "#lib/plan/winter/worksheet";

/** A piece of winter work in words: what is done, without a full stop, and how, in sentences that are the same for every bed. */
export type TaskWords = { readonly what: string; readonly how: string };

export function taskWords({ work, variety }: Pick<WinterTask, "work" | "variety">): TaskWords {
  const named = variety === null ? "" : ` ${variety.name}, ${variety.colour}`;
  switch (work) {
    case "cut tops":
      return { what: "Supports and stakes off", how: "Cut the tops and lay them on the bed." };
    case "leaves on":
      return { what: "Leaves on, to the full depth and over the edges", how: "" };
    case "tarp on":
      return { what: "Tarp over the leaves, weights all round, water led off", how: "" };
    case "look":
      return { what: "Look", how: "Tarp tight, no standing water, no tunnels of voles." };
    case "uncover":
      return {
        what: "Tarp off, leaves drawn back from the crowns",
        how: "Count live shoots; mark what is dead.",
      };
    case "dig":
      return { what: `Dig${named}`, how: "Tops off, soil shaken out, a label on every clump." };
    case "divide":
      return {
        what: `Divide and label${named}`,
        how: "Every division needs an eye. Store at 40 to 50 F (4.4 to 10 C).",
      };
    case "check store":
      return { what: `Check${named} in store`, how: "Out with rot, mist what shrivels." };
    case "replant":
      return { what: `Plant${named} again`, how: "" };
  }
}

/** "Dig Lark Ember, orange. Tops off, soil shaken out, a label on every clump." */
export function taskInWords(task: Pick<WinterTask, "work" | "variety">): string {
  const { what, how } = taskWords(task);
  return how ? `${what}. ${how}` : `${what}.`;
}
