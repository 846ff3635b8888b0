import type { Farm } from "#lib/domain/records/farm-settings";
import { ArcList } from "#lib/maths/arc-list";
import { CLAIMS } from "./claim";
import { AGE_CENTS, ageCents } from "./fit";
import { hasStretch, servingWindow } from "./hold-window";
import type { Need } from "./needs";
import type { ShortPrices } from "./short-cents";
import { stretchCentsFinder } from "./stretch-cents";
import type { VarietySupply } from "./supply";

/** Stands for a passage that has nothing to pass on. */
export const NO_PASSAGE = -1;

/** Stands for a passage that was not asked for yet. */
const UNKNOWN = -2;

/** What a passage must know of a need. */
type Timed = Pick<Need, "eventDay" | "leadDays">;

/**
 * The (variety, event day, last-cut day) nodes of the match, made when first asked for, with the arcs from the supplies that keep until the event and are cut by
 * the last-cut day [M12]. A variety that can be held at a stretch has one for each kind of claim: what a stretch costs is weighed like the claim it serves.
 */
export class Passages {
  readonly arcs = new ArcList(1024);
  count = 0;
  /** Passage of a variety on a day, row after row, in each last cut after last cut, and in these day after day of the season; see `UNKNOWN` and `NO_PASSAGE`. */
  readonly #known: Int32Array;
  /** The first row of each variety; it has one, or as many as there are kinds of claims. */
  readonly #firstRow: Int32Array;
  readonly #firstDay: number;
  readonly #dayCount: number;
  readonly #varieties: number[] = [];
  /** The place of each number of days from last cut to event among those that needs have; most farms have one or two. */
  readonly #placeOfLead: Int32Array;
  readonly #leadCount: number;
  readonly #stretchCents: ReturnType<typeof stretchCentsFinder>;
  readonly #supplies: readonly VarietySupply[];
  readonly #firstSupply: Int32Array;

  constructor(
    farm: Farm,
    supplies: readonly VarietySupply[],
    firstSupply: Int32Array,
    needs: readonly Need[],
    buyIn: ShortPrices,
  ) {
    const first = needs.reduce((day, need) => Math.min(day, need.eventDay), Number.POSITIVE_INFINITY);
    const last = needs.reduce((day, need) => Math.max(day, need.eventDay), Number.NEGATIVE_INFINITY);
    this.#firstDay = first;
    this.#dayCount = needs.length ? last - first + 1 : 0;
    this.#firstRow = new Int32Array(supplies.length + 1);
    supplies.forEach(({ hold }, index) => {
      this.#firstRow[index + 1] = this.#firstRow[index] + (hasStretch(hold) ? CLAIMS.length : 1);
    });
    const leads = [...new Set(needs.map(({ leadDays }) => leadDays))];
    this.#leadCount = leads.length;
    this.#placeOfLead = new Int32Array(Math.max(0, ...leads) + 1);
    leads.forEach((leadDays, place) => {
      this.#placeOfLead[leadDays] = place;
    });
    this.#known = new Int32Array(this.#firstRow[supplies.length] * this.#leadCount * this.#dayCount).fill(UNKNOWN);
    this.#stretchCents = stretchCentsFinder(farm, buyIn);
    this.#supplies = supplies;
    this.#firstSupply = firstSupply;
  }

  /**
   * The place among the passages of the one that brings a variety to needs of an event day, a last cut and a claim, or `NO_PASSAGE` when it has nothing in the hold window.
   * @param claim  its place among `CLAIMS`
   */
  of(variety: number, { eventDay, leadDays }: Timed, claim: number): number {
    const isStretched = this.#firstRow[variety + 1] - this.#firstRow[variety] > 1;
    const row = this.#firstRow[variety] + (isStretched ? claim : 0);
    const key = (row * this.#leadCount + this.#placeOfLead[leadDays]) * this.#dayCount + eventDay - this.#firstDay;
    const known = this.#known[key];
    if (known !== UNKNOWN) return known;
    const { crop } = this.#supplies[variety];
    const wholeStretchCents = isStretched ? this.#stretchCents(crop, CLAIMS[claim]) : AGE_CENTS;
    this.#known[key] = this.#make(variety, { eventDay, leadDays }, wholeStretchCents);
    return this.#known[key];
  }

  varietyOfPassage = (): Int32Array => Int32Array.from(this.#varieties);

  #make(variety: number, { eventDay, leadDays }: Timed, wholeStretchCents: number): number {
    const supply = this.#supplies[variety];
    const { days, hold } = supply;
    // What was cut for a booking is cut: it costs nothing more to use it [T2].
    const isOwn = supply.bookingId !== undefined;
    const { earliest, latest } = servingWindow(eventDay, leadDays, supply);
    let index = firstAtLeast(days, earliest);
    if (index === days.length || days[index] > latest) return NO_PASSAGE;
    for (; index < days.length && days[index] <= latest; index++)
      this.arcs.push(
        this.#firstSupply[variety] + index,
        this.count,
        isOwn ? 0 : ageCents(eventDay - days[index], leadDays, hold, wholeStretchCents),
      );
    this.#varieties.push(variety);
    return this.count++;
  }
}

/** The first index whose day is `least` or later; the length when there is none. */
function firstAtLeast(days: readonly number[], least: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle] < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
