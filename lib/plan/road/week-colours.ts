import { mondayNumber, toDayNumber } from "#lib/domain/day";
import { COLOURS, type Colour, ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "./plan";
import { measuredDays } from "./reach";
import type { Stand } from "./supply";

/** Stems of one colour; `isKept` when they come from beds kept in the ground over winter. */
export type ColourStems = { readonly colour: Colour; readonly isKept: boolean; readonly stems: number };

/**
 * The stems of one role in one week by colour: `covered` are given to the week's needs, `unclaimed` could be cut for its events and serve
 * nobody. Colours in the order of `COLOURS`, those of kept beds after the others; none with 0 stems.
 */
export type WeekColours = { readonly covered: readonly ColourStems[]; readonly unclaimed: readonly ColourStems[] };

/**
 * Every week of a plan by colour, in the order of its weeks. Covered stems sum to the week's covered stems of the role; an unclaimed stem
 * counts once in a week, and in each week whose events it could serve [G5].
 */
export function weekColours(plan: Plan, role: Role): WeekColours[] {
  const { weeks } = plan;
  const covered = coveredColours(plan, role);
  const unclaimed = unclaimedByWeek(plan, role);
  return weeks.map((_, index) => ({ covered: covered[index], unclaimed: unclaimed[index] }));
}

/** The stems given to each week's needs by colour, of one role or of all together, in the order of the plan's weeks [G5]. */
export function coveredColours({ match, weeks }: Plan, role: Role | "all"): (readonly ColourStems[])[] {
  const covered = weeks.map(() => new Tally());
  const weekOf = new Map(weeks.map(({ monday }, index) => [toDayNumber(monday), index]));
  for (const { needIndex, supplyIndex, stand, stems } of match.servings) {
    const need = match.needs[needIndex];
    if (role !== "all" && need.role !== role) continue;
    const week = weekOf.get(mondayNumber(need.eventDay));
    if (week !== undefined) covered[week].add(match.supplies[supplyIndex].variety.colour, isKept(stand), stems);
  }
  return covered.map((tally) => tally.rows());
}

const isKept = (stand: Stand): boolean =>
  stand.kind === "planting" && stand.planting.planting.treatment === "kept-in-ground";

/** Unclaimed stems of what can take the role, in each week whose events they could serve. Seen from the cut: a stem looks at the few days it may be held for. */
function unclaimedByWeek({ snapshot: { farm }, match, work: { unclaimed }, weeks }: Plan, role: Role): ColourStems[][] {
  const measured = new Map<number, { readonly week: number; readonly leadDays: number }>();
  weeks.forEach(({ monday }, week) => {
    const first = toDayNumber(monday);
    const ofWeek = match.needs.filter(({ eventDay }) => eventDay >= first && eventDay < first + 7);
    for (const { eventDay, leadDays } of measuredDays(farm, first, ofWeek))
      measured.set(eventDay, { week, leadDays: leadDays[ROLES.indexOf(role)] });
  });
  const takesRole = new Set(
    match.supplies.filter(({ crop }) => crop.roles.includes(role)).map(({ variety }) => variety.id),
  );
  const tallies = weeks.map(() => new Tally());
  for (const { variety, cutDay, lastUsefulDay, stems } of unclaimed) {
    if (!takesRole.has(variety.id)) continue;
    let counted: number | undefined;
    for (let day = cutDay; day <= lastUsefulDay; day++) {
      const event = measured.get(day);
      if (event === undefined || event.week === counted || day - event.leadDays < cutDay) continue;
      tallies[event.week].add(variety.colour, false, stems);
      counted = event.week;
    }
  }
  return tallies.map((tally) => tally.rows());
}

/** Stems added up by colour and by whether their bed was kept. */
class Tally {
  readonly #stems = new Int32Array(COLOURS.length * 2);

  add(colour: Colour, kept: boolean, stems: number): void {
    this.#stems[COLOURS.indexOf(colour) + (kept ? COLOURS.length : 0)] += stems;
  }

  rows(): ColourStems[] {
    return [false, true].flatMap((kept) =>
      COLOURS.flatMap((colour, index) => {
        const stems = this.#stems[index + (kept ? COLOURS.length : 0)];
        return stems ? [{ colour, isKept: kept, stems }] : [];
      }),
    );
  }
}
