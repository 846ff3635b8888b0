import { yearOf } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import { stemsShort } from "#lib/plan/road/gaps";
import { askedBy } from "#lib/plan/road/needs";
import { type Plan, plan } from "#lib/plan/road/plan";
import { winterBeds } from "#lib/plan/winter/beds";
import { bedsKeptNow } from "#lib/plan/winter/kept-beds";

/** How much earlier the frost is tried. */
export const FROST_TRIED_DAYS = 14;

/** What the four figures that a grower sets first move in a season: survival in the ground, first frost, an hour's wage, a booking's spare. */
export type FirstFigures = {
  readonly seasonYear: number;
  /** Beds that could stay in the ground, and those that do. */
  readonly winterBedCount: number;
  readonly keptBedCount: number;
  /** Stems short that a first frost {@link FROST_TRIED_DAYS} earlier adds. */
  readonly earlyFrostShortStems: number;
  /** Hours to dig, divide and replant every bed that could stay. */
  readonly digHours: number;
  /** Stems that the season's bookings ask for, and those of them that are there for breakage alone. */
  readonly stems: number;
  readonly spareStems: number;
};

/**
 * What the first figures move, told by the plan as it stands and by one more with the frost {@link FROST_TRIED_DAYS} days earlier. Spare stems are
 * the needs less what they would be without any spare, each rounded up as a need is [N1].
 */
export function firstFigures(stands: Plan): FirstFigures {
  const { snapshot, seasonYear, frostDay } = stands;
  const beds = winterBeds(snapshot, seasonYear);
  const recipes = new ById("recipe", snapshot.recipes);
  const asked = stands.match.needs.filter(({ booking }) => yearOf(booking.eventOn) === seasonYear);
  const bookings = [...new Set(asked.map(({ booking }) => booking))];
  const bare = bookings.flatMap((booking) => askedBy({ ...booking, spareShare: 0 }, recipes));
  const early = plan(snapshot, seasonYear, frostDay - FROST_TRIED_DAYS, stands, stands.today);
  const stems = stemsOf(asked);
  return {
    seasonYear,
    winterBedCount: beds.length,
    keptBedCount: bedsKeptNow(snapshot, seasonYear).length,
    earlyFrostShortStems: stemsShort(early.gaps) - stemsShort(stands.gaps),
    digHours: beds.reduce((hours, { dig }) => hours + dig.hours, 0),
    stems,
    spareStems: stems - stemsOf(bare),
  };
}

const stemsOf = (needs: readonly { readonly stems: number }[]): number =>
  needs.reduce((sum, { stems }) => sum + stems, 0);
