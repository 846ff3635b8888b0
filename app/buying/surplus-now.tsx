import { mondayNumber, toDay, withWeekday } from "#lib/domain/day";
import type { Surplus } from "#lib/plan/road/surplus";
import { type SurplusWeek, surplusWeeks } from "#lib/plan/road/surplus-weeks";
import { inWholes } from "#lib/plan/words/numbers";

/** Crops named at first; the others are in the table of all lots. */
const CROPS_NAMED = 6;

/** The first week from `now` in which stems are over: by crop, most first, each with its colours, to offer in time. Nothing when no stem is. */
export function SurplusNow({ surplus, now }: { surplus: readonly Surplus[]; now: number }) {
  const weeks = surplusWeeks(surplus.filter(({ cutDay }) => cutDay >= now));
  const [first] = weeks;
  if (!first) return null;
  const ofWeek = weeks.filter(({ monday }) => monday === first.monday);
  const crops = byCrop(ofWeek);
  const when = first.monday === mondayNumber(now) ? "this week" : `the week of ${withWeekday(toDay(first.monday))}`;
  return (
    <section aria-labelledby="surplus-now">
      <h2 id="surplus-now">
        {inWholes(stemsOf(ofWeek))} stems of {when} are nobody’s yet
      </h2>
      <ul className="offers">
        {crops.slice(0, CROPS_NAMED).map(([lot, ...others]) => (
          <li key={lot.crop.id}>
            <svg className={`gl f-${lot.variety.colour}`} width="28" height="28" aria-hidden="true">
              <use href={`#r-${lot.crop.usualRole}`} />
            </svg>
            <span>
              <b>{lot.crop.name}</b>
              <small>
                {[lot, ...others].map(({ stems, variety }) => `${inWholes(stems)} ${variety.colour}`).join(", ")}; of
                use until {withWeekday(toDay(Math.max(...[lot, ...others].map(({ lastUsefulDay }) => lastUsefulDay))))}
              </small>
            </span>
            <b className="offer-count">{inWholes(stemsOf([lot, ...others]))}</b>
          </li>
        ))}
      </ul>
      {crops.length > CROPS_NAMED && (
        <p className="note">
          and {inWholes(stemsOf(crops.slice(CROPS_NAMED).flat()))} of {crops.length - CROPS_NAMED} more crops.
        </p>
      )}
    </section>
  );
}

const stemsOf = (lots: readonly SurplusWeek[]): number => lots.reduce((sum, { stems }) => sum + stems, 0);

/** The lots of each crop, the crop with most stems first. */
function byCrop(lots: readonly SurplusWeek[]): SurplusWeek[][] {
  const crops = new Map<number, SurplusWeek[]>();
  for (const lot of lots) {
    const known = crops.get(lot.crop.id);
    if (known) known.push(lot);
    else crops.set(lot.crop.id, [lot]);
  }
  return [...crops.values()].sort((a, b) => stemsOf(b) - stemsOf(a));
}
