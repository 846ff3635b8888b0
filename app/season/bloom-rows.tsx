import { type Day, dayInYear, inShort, type MonthDay, monthInShort, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import { type Role, TREATMENT_WORDS } from "#lib/domain/words";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import type { Plan } from "#lib/plan/road/plan";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";

const ROWS_AT_FIRST = 24;
const MONTHS = ["03", "04", "05", "06", "07", "08", "09", "10", "11"];

/** A row per planting that can take the role: its bloom weeks from March to November, darker where more is cut, and its stems in words. */
export function BloomRows({ plan, role, showAll }: { plan: Plan; role: Role; showAll: boolean }) {
  const rows = plan.forecast.plantings
    .filter(({ crop }) => crop.roles.includes(role))
    .sort((a, b) => firstDay(a) - firstDay(b) || a.planting.id - b.planting.id);
  const shown = showAll ? rows : rows.slice(0, ROWS_AT_FIRST);
  const start = toDayNumber(dayInYear("03-01" as MonthDay, plan.seasonYear));
  const end = toDayNumber(dayInYear("11-30" as MonthDay, plan.seasonYear));
  const most = Math.max(1, ...rows.flatMap((row) => weeklyStems(row, start, end)));
  return (
    <section aria-labelledby="bloom">
      <h2 id="bloom">What blooms when: {role}</h2>
      {rows.length === 0 && (
        <p>
          No planting of this season can take the role. <a href="/beds">Plan a bed</a>
        </p>
      )}
      {rows.length > 0 && (
        <ol className="bloom-rows">
          <li className="month-names" aria-hidden="true">
            <svg viewBox={`0 0 ${end - start} 6`} className="strip-names" aria-hidden="true">
              {MONTHS.map((month) => firstOf(month, plan.seasonYear)).map((first) => (
                <text key={first} x={toDayNumber(first) - start + 1} y="5">
                  {monthInShort(first)}
                </text>
              ))}
            </svg>
          </li>
          {shown.map((row) => (
            <li key={row.planting.id}>
              <span>
                <a href={`/beds/${row.bed.id}`}>
                  {row.bed.name} · {row.crop.name} {row.variety.name}
                </a>{" "}
                <span className="small">
                  <ColourWord colour={row.variety.colour} />
                </span>
              </span>
              <Strip row={row} start={start} end={end} most={most} />
              <span className="number small">{inWholes(cutStems(row))} stems</span>
            </li>
          ))}
        </ol>
      )}
      {rows.length > shown.length && (
        <p>
          <a className="button" href={`/?role=${role}&all#bloom`}>
            Show all {countOf(rows.length, "planting")}
          </a>
        </p>
      )}
    </section>
  );
}

const firstOf = (month: string, year: number): Day => dayInYear(`${month}-01` as MonthDay, year);
const firstDay = (row: PlantingForecast): number => row.cutDays[0] ?? Number.MAX_SAFE_INTEGER;
const cutStems = (row: PlantingForecast): number => row.cutStems.reduce((sum, stems) => sum + stems, 0);

function weeklyStems(row: PlantingForecast, start: number, end: number): number[] {
  const weeks = new Array<number>(Math.ceil((end - start + 1) / 7)).fill(0);
  row.cutDays.forEach((day, index) => {
    const week = Math.floor((day - start) / 7);
    if (week >= 0 && week < weeks.length) weeks[week] += row.cutStems[index];
  });
  return weeks;
}

function Strip({ row, start, end, most }: { row: PlantingForecast; start: number; end: number; most: number }) {
  const weeks = weeklyStems(row, start, end);
  const words =
    row.cutDays.length === 0
      ? "nothing to cut"
      : `cut from ${inShort(toDay(row.cutDays[0]))} to ${inShort(toDay(row.cutDays[row.cutDays.length - 1]))}, ${TREATMENT_WORDS[row.planting.treatment]}`;
  return (
    <svg className="strip" viewBox={`0 0 ${end - start} 20`} preserveAspectRatio="none" role="img" aria-label={words}>
      <title>{words}</title>
      {MONTHS.slice(1).map((month) => {
        const x = toDayNumber(firstOf(month, yearOf(toDay(start)))) - start;
        return <line key={month} className="month" x1={x} x2={x} y1="0" y2="20" />;
      })}
      {weeks.map((stems, week) => {
        if (stems === 0) return null;
        const height = 3 + 15 * Math.sqrt(stems / most);
        // biome-ignore lint/suspicious/noArrayIndexKey: the index is the week
        return <rect key={week} className="bloom" x={week * 7 + 0.5} y={19 - height} width="6" height={height} />;
      })}
    </svg>
  );
}
