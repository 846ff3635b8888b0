import { mondayNumber, toDayNumber } from "#lib/domain/day";
import { COLOURS, type Colour, type Role } from "#lib/domain/words";
import { holdWindow } from "./hold-window";
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
  const { match, weeks } = plan;
  const covered = coveredColours(plan, role);
  const eventDays = [...new Set(match.needs.map(({ eventDay }) => eventDay))];
  return weeks.map(({ monday }, index) => {
    const first = toDayNumber(monday);
    const days = measuredDays(
      first,
      eventDays.filter((day) => day >= first && day < first + 7),
    );
    return { covered: covered[index], unclaimed: unclaimedOn(plan, role, days) };
  });
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

function unclaimedOn(
  { snapshot: { farm }, match, surplus }: Plan,
  role: Role,
  eventDays: readonly number[],
): ColourStems[] {
  const tally = new Tally();
  const takesRole = new Set(
    match.supplies.filter(({ crop }) => crop.roles.includes(role)).map(({ variety }) => variety.id),
  );
  for (const { variety, crop, cutDay, stems } of surplus) {
    if (!takesRole.has(variety.id)) continue;
    const serves = eventDays.some((day) => {
      const { earliest, latest } = holdWindow(day, farm.leadDays, crop.holdDays.count);
      return cutDay >= earliest && cutDay <= latest;
    });
    if (serves) tally.add(variety.colour, false, stems);
  }
  return tally.rows();
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
