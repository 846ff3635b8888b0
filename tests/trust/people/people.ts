import type { Figures } from "../part";
import { type DayFound, type DaySize, wholeDay } from "./whole-day";

const DAYS = 10;
const WHOLE: DaySize = { people: 6, steps: 400, kills: 6 };
/** What runs with every test: one day, and not much of it. */
const SHORT: DaySize = { people: 3, steps: 30, kills: 1 };
const SEED = 41;

/**
 * Days on a farm that is open to its people, at the built server: an owner, helpers and designers who sign in, join, are put out and come back; phones whose
 * counts are late, doubled, lost and taken back; corrections at the machine; trespass; kills in the middle. At the end all must be as on a sheet of paper.
 */
export async function people(scale: number): Promise<Figures> {
  const dayCount = Math.round(DAYS * scale);
  const days: DayFound[] = [];
  for (let day = 0; day < Math.max(1, dayCount); day++)
    days.push(await wholeDay(SEED + day, dayCount === 0 ? SHORT : WHOLE));
  const sum = (pick: (day: DayFound) => number) =>
    days.reduce((total, day) => total + pick(day), 0).toLocaleString("en");
  const faults = days.flatMap((day) => day.faults);
  return {
    title: "Days on a farm that is open to its people",
    lines: [
      `${days.length} days: ${sum((day) => day.joins)} phones joined, ${sum((day) => day.kills)} kills of the server`,
      `${sum((day) => day.sendings)} sendings of phones, late, doubled, lost and taken back; ${sum((day) => day.counts)} counts stand, each once`,
      `${sum((day) => day.trespasses)} times somebody opened, called and sent what is not theirs`,
      `lost, counted twice, let in, written by another or without a name, secrets told: ${faults.length}`,
    ],
    faults,
  };
}
