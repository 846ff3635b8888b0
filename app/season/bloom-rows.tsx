import { type Day, inShort, monthInShort, toDay } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Role } from "#lib/domain/words";
import { bloomByCrop, type CropBloom } from "#lib/plan/road/bloom-by-crop";
import type { Plan } from "#lib/plan/road/plan";
import { weeksGone } from "#lib/plan/road/to-come";
import { KEPT } from "#lib/plan/winter/beds";
import { inWholes } from "#lib/plan/words/numbers";
import { Patterns } from "../look/patterns";

const WEEK = 10;
const HEIGHT = 30;
/** Beds that the words of a strip name before they say how many more. */
const NAMED_COUNT = 8;

/** What blooms when for a role: a strip for each crop, a bar a week stacked by colour, and its stems of the season. */
export function BloomRows({ plan, role }: { plan: Plan; role: Role }) {
  const mondays = plan.weeks.slice(weeksGone(plan)).map(({ monday }) => monday);
  const crops = bloomByCrop(plan, role, mondays).filter(
    ({ stems }) => stems > 0 || mondays.length === plan.weeks.length,
  );
  return (
    <section aria-labelledby="bloom">
      <h2 id="bloom">What blooms when, {role}</h2>
      {crops.length === 0 ? (
        <p>
          No planting of this season can take the role. <a href="/beds">Plan a bed</a>
        </p>
      ) : (
        <>
          <Patterns />
          <ul className="bloom-rows">
            <li className="bloom-months" aria-hidden="true">
              <span />
              <MonthNames mondays={mondays} />
              <small>stems</small>
            </li>
            {crops.map((crop) => (
              <li key={crop.crop.id}>
                <a href={`/beds?crop=${encodeURIComponent(crop.crop.name)}`}>{crop.crop.name}</a>
                <Strip bloom={crop} weekCount={mondays.length} />
                <span className="number">{inWholes(crop.stems)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** Over few weeks the names stay as small as over a whole season's. */
const NAMES_WIDTH = 380;

function MonthNames({ mondays }: { mondays: readonly Day[] }) {
  const width = Math.max(NAMES_WIDTH, mondays.length * WEEK);
  return (
    <svg viewBox={`0 0 ${width} 16`} className="bloom-month-names" aria-hidden="true">
      {mondays.map((monday, week) =>
        !beginsMonth(mondays, week) ? null : (
          <text key={monday} x={tenth((week * width) / mondays.length + 1)} y="12">
            {monthInShort(monday)}
          </text>
        ),
      )}
    </svg>
  );
}

/** Whether a month's name stands at a week: its first here, unless so little of it is shown that the next name would run into it. */
function beginsMonth(mondays: readonly Day[], week: number): boolean {
  const month = monthInShort(mondays[week]);
  if (week > 0) return monthInShort(mondays[week - 1]) !== month;
  return mondays.length > 2 && monthInShort(mondays[2]) === month;
}

function Strip({ bloom, weekCount }: { bloom: CropBloom; weekCount: number }) {
  const sums = Array.from({ length: weekCount }, (_, week) =>
    bloom.colours.reduce((sum, { weekStems }) => sum + weekStems[week], 0),
  );
  const scale = (HEIGHT - 2) / Math.max(1, ...sums);
  const base = new Array<number>(weekCount).fill(0);
  const words = bloomInWords(bloom);
  return (
    <svg viewBox={`0 0 ${weekCount * WEEK} ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label={words}>
      <title>{words}</title>
      {bloom.colours.map(({ colour, weekStems }) => {
        const bars = weekStems.map((stems, week) => {
          if (stems === 0) return "";
          const height = stems * scale;
          base[week] += height;
          return `M${week * WEEK + 0.6} ${tenth(HEIGHT - 1 - base[week])}h${WEEK - 1.2}v${tenth(height)}h-${WEEK - 1.2}z`;
        });
        return <path key={colour} className={`bar f-${colour}`} d={bars.join("")} />;
      })}
      <path className="bloom-soil" d={`M0 ${HEIGHT - 0.5}H${weekCount * WEEK}`} />
    </svg>
  );
}

const tenth = (length: number): number => Math.round(length * 10) / 10;

/** "Dahlia in cream and pink: cut from 7 Jun to 18 Oct; kept in the ground: Long Field 2" */
function bloomInWords({ crop, colours, plantings }: CropBloom): string {
  const days = plantings.flatMap(({ cutDays }) => (cutDays.length ? [cutDays[0], cutDays[cutDays.length - 1]] : []));
  const when = days.length
    ? `cut from ${inShort(toDay(days.reduce((a, b) => Math.min(a, b))))} to ${inShort(toDay(days.reduce((a, b) => Math.max(a, b))))}`
    : "nothing to cut";
  const kept = [...new Set(plantings.filter(({ planting }) => planting.treatment === KEPT).map(({ bed }) => bed.name))];
  const more = kept.length - NAMED_COUNT;
  const named = [...kept.slice(0, NAMED_COUNT), ...(more > 0 ? [`${more} more`] : [])];
  return `${crop.name} in ${allOf(colours.map(({ colour }) => colour))}: ${when}${kept.length ? `; kept in the ground: ${allOf(named)}` : ""}`;
}
