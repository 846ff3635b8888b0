import { inFull } from "#lib/domain/day";
import { MEASURES, shown } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/spread-work";
import type { WinterWorksheet } from "#lib/plan/winter/worksheet";
import { countOf, hoursInWords, inTenths, inWholes } from "./numbers";

/** A piece of winter work in words: what is done, without a full stop, and how, in sentences that are the same for every bed. */
export type TaskWords = { readonly what: string; readonly how: string };

export function taskWords({ work, variety }: Pick<WinterTask, "work" | "variety">): TaskWords {
  const named = variety === null ? "" : ` ${variety.name}, ${variety.colour}`;
  switch (work) {
    case "cut tops":
      return {
        what: "Supports and stakes off, tops cut and taken away",
        how: "Left on the bed they rot and house voles. Labels stay.",
      };
    case "haul leaves":
      return { what: "Leaves hauled to the bed", how: "" };
    case "voles":
      return {
        what: "Voles before covering",
        how: "Look for runs and holes; trap first, for the cover keeps them safe.",
      };
    case "leaves on":
      return { what: "Leaves on, crowned and over the edges", how: "Higher in the middle, so that water runs off." };
    case "tarp on":
      return {
        what: "Tarp over the leaves and past the edges",
        how: "Weights all round, water led away from the bed.",
      };
    case "look":
      return {
        what: "Look",
        how: "Tarp tight, no standing water, no tunnels of voles; on a sunny day lift an end: it gets hot under there.",
      };
    case "vent":
      return {
        what: "Vent: ends of the tarp open",
        how: "Right off on sunny days, on again for a hard frost.",
      };
    case "uncover":
      return { what: "Tarp off, leaves drawn back from the crowns", how: "" };
    case "frost cloth":
      return {
        what: "Frost cloth at hand, until the late frosts are over",
        how: "Over the shoots on every night of frost.",
      };
    case "count and thin":
      return {
        what: "Count, thin, look for slugs",
        how: "Mark what is dead; leave three to five strong shoots a clump; slugs come for the first leaves.",
      };
    case "replant dead":
      return { what: "Tubers into the places of the dead", how: "" };
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

/**
 * What the work that is left takes, without what it does not: "4 beds kept, 2 dug: 12.5 hours, 6.1 cubic yards of leaves laid 9.8 inches deep, 80 clumps to lift, 40 left in."
 * Where no work is left it says so.
 */
export function workTakesInWords({ beds, tasks, totals, leafDepthLaidMetres }: WinterWorksheet, units: Units): string {
  const keptCount = beds.filter(({ fate }) => fate === "kept").length;
  const fates = `${countOf(keptCount, "bed")} kept, ${countOf(beds.length - keptCount, "bed")} dug`;
  if (tasks.length === 0) return `${fates}: no work of this winter is left.`;
  const { volume, area, depth } = MEASURES[units];
  const { hours, leafCubicMetres, tarpSquareMetres, dugClumpCount, keptClumpCount } = totals;
  const parts = [
    hours > 0 && hoursInWords(hours),
    leafCubicMetres > 0 &&
      `${inTenths(leafCubicMetres * volume.shownPerStored)} ${volume.word} of leaves laid ${shown(depth, leafDepthLaidMetres)} ${depth.word} deep`,
    tarpSquareMetres > 0 && `${inWholes(tarpSquareMetres * area.shownPerStored)} ${area.word} of tarp`,
    dugClumpCount > 0 && `${countOf(dugClumpCount, "clump")} to lift`,
    keptClumpCount > 0 && `${inWholes(keptClumpCount)} left in the ground`,
  ];
  return `${fates}: ${parts.filter((part) => part !== false).join(", ")}.`;
}

const OF_AUTUMN: ReadonlySet<WinterTask["work"]> = new Set(["haul leaves", "leaves on", "dig", "divide"]);

/** Whether leaves, tarps or clumps are still to be moved: work of the autumn and of covered beds, not of planting again. */
export const isWinterWork = ({ tasks }: Pick<WinterWorksheet, "tasks">): boolean =>
  tasks.some(({ work }) => work !== "replant" && work !== "replant dead");

/** When the work of autumn is done and that of spring begins: "At 6 hours a day digging and covering end on Friday, 20 November 2026. Covers come off on …" */
export function workInWords({ tasks, dates }: Pick<WinterWorksheet, "tasks" | "dates">, hoursPerDay: number): string {
  const autumn = tasks.filter(({ work, hours }) => hours > 0 && OF_AUTUMN.has(work));
  const covered = tasks.some(({ work }) => work === "uncover");
  const ends = autumn.at(-1);
  return [
    ends && `At ${hoursInWords(hoursPerDay)} a day digging, dividing and covering end on ${inFull(ends.day)}.`,
    covered &&
      `Covers are vented from ${inFull(dates.ventOn)} and off on ${inFull(dates.uncoverOn)}, with frost cloth at hand until ${inFull(dates.lateFrostOn)}, after which one year in ten still has frost.`,
  ]
    .filter(Boolean)
    .join(" ");
}
