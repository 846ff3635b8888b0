import { z } from "zod";
import { inQuotes } from "../in-quotes";
import { FIRST_SEASON, LAST_SEASON } from "../season-years";
import { field } from "./field";
import { type Kind, listOf } from "./kinds";

/** The most that a curve can learn. Our choice: two months, and five times the stems. */
const MOST_DAYS = 60;
const MOST_FACTOR = 5;

const learnedSchema = z.object({
  fromSeason: z.int().min(FIRST_SEASON).max(LAST_SEASON),
  laterDays: z.int("write whole days").min(-MOST_DAYS, "at most 60 days").max(MOST_DAYS, "at most 60 days"),
  yieldFactor: z.number().min(0.05, "at least 0.05 times the stems").max(MOST_FACTOR, "at most 5 times the stems"),
});

/**
 * What recorded seasons have taught of a curve, for a season and those after it until the next one that is told: its first cut so many days later in all, and
 * so many times its stems. Seasons before stay by the curve as it was.
 */
export type Learned = z.infer<typeof learnedSchema>;

const learned: Kind<Learned> = {
  input: "text",
  hint: 'the season from which it counts, days later and times the stems, for example "2028: 4 days, 0.95"',
  read: (text) => {
    const found = /^(\d{4}): (-?\d{1,3}) days?, (\d(?:\.\d{1,4})?)$/.exec(text);
    return found
      ? {
          ok: true,
          value: { fromSeason: Number(found[1]), laterDays: Number(found[2]), yieldFactor: Number(found[3]) },
        }
      : { ok: false, message: `${inQuotes(text)} is not a lesson: write as in "2028: 4 days, 0.95"` };
  },
  write: ({ fromSeason, laterDays, yieldFactor }) => `${fromSeason}: ${laterDays} days, ${yieldFactor}`,
};

export const LEARNED = field(listOf(learned), z.array(learnedSchema).max(100, "at most 100 seasons"), {
  absent: [],
  label: "Learned from recorded seasons",
  hint: "From a season on, so many days later and so many times the stems. Left empty, the curve stands as it is.",
});

type Learns = { readonly learned: readonly Learned[] };

/** What a curve without lessons has learned. */
export const NOTHING_LEARNED = { laterDays: 0, yieldFactor: 1 };

/** What a curve has learned that counts in a season: the last that was told for it or a season before [F16]. */
export const learnedFor = ({ learned: all }: Learns, seasonYear: number): Omit<Learned, "fromSeason"> => {
  let last: Learned | null = null;
  for (const one of all)
    if (one.fromSeason <= seasonYear && (last === null || one.fromSeason >= last.fromSeason)) last = one;
  return last ?? NOTHING_LEARNED;
};

/**
 * All that was learned but of the timing, or but of the stems: the number itself was changed, and is not to be moved on top. Lessons that then say
 * nothing stand as long as another says something: they end what an earlier one says.
 */
export function unlearned(all: readonly Learned[], part: keyof typeof NOTHING_LEARNED): Learned[] {
  const rest = all.map((one) => ({ ...one, [part]: NOTHING_LEARNED[part] }));
  return rest.some(({ laterDays, yieldFactor }) => laterDays !== 0 || yieldFactor !== 1) ? rest : [];
}
