import { toDay, weekInWords } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import { stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import type { ReachBand } from "#lib/plan/road/season-band";
import { gapsAhead, weeksGone } from "#lib/plan/road/to-come";
import { weekColours } from "#lib/plan/road/week-colours";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { RibbonWeek } from "./cells";
import { ribbonGeometry, weekLeft } from "./geometry";
import { Ribbon } from "./ribbon";
import { RibbonFocus, type WeekSaid } from "./ribbon-focus.client";
import { RibbonKey } from "./ribbon-key";
import { RibbonRows } from "./ribbon-rows";

/** A way the winter may go: what its switch says, and the plan it gives. */
export type Winter = { readonly key: string; readonly words: string; readonly plan: Plan };

type Props = {
  readonly role: Role;
  readonly winters: readonly Winter[];
  readonly shown: string;
  readonly band: readonly ReachBand[];
  /** What the switch will hold besides, once it is known, the first before the others: its place is kept. */
  readonly coming?: readonly string[];
  readonly children?: React.ReactNode;
};

/** The season ribbon of one role from the week at hand on, with its switch between winters, its weeks to look into, and its key. `band`: the poor and the rich year of each week, of the plan as it stands. */
export function SeasonRibbon({ role, winters, shown, band, coming = [], children }: Props) {
  const [{ plan: first }] = winters;
  const colours = winters.map(({ plan }) => weekColours(plan, role));
  const weeksOf = (winter: number): RibbonWeek[] =>
    first.weeks.map((_, week) => {
      const found = winters[winter].plan.weeks[week]?.roles[ROLES.indexOf(role)];
      return {
        needStems: found?.needStems ?? 0,
        shortStems: found?.shortStems ?? 0,
        covered: colours[winter][week]?.covered ?? [],
        unclaimed: colours[winter][week]?.unclaimed ?? [],
      };
    });
  const all = winters.map((_, winter) => weeksOf(winter));
  const isShown = first.weeks.map((_, week) =>
    all.some((weeks) => weeks[week].needStems > 0 || weeks[week].unclaimed.length > 0),
  );
  const from = Math.max(weeksGone(first), isShown.indexOf(true));
  const to = isShown.lastIndexOf(true) + 1;
  const plans = winters.map(({ key }, winter) => ({ key, weeks: all[winter].slice(from, to) }));
  const weeks = first.weeks.slice(from, to);
  const mondays = weeks.map(({ monday }) => monday);
  const needs = plans[0].weeks.map(({ needStems }) => needStems);
  const geometry = ribbonGeometry(mondays.length, Math.max(1, ...needs));
  const nameOf = new Map(first.snapshot.bookings.map(({ id, client }) => [id, client]));
  const said: WeekSaid[] = weeks.map(({ monday, bookingIds }, week) => ({
    words: weekInWords(monday),
    bookings: bookingIds.map((id) => nameOf.get(id) ?? "").join(" · "),
    figures: Object.fromEntries(plans.map(({ key, weeks: of }) => [key, figuresInWords(of[week])])),
    reach: band[from + week].highStems > 0 ? reachInWords(band[from + week]) : "",
  }));
  const shortOf = (key: string) =>
    plans.find((plan) => plan.key === key)?.weeks.map(({ shortStems }) => shortStems) ?? [];
  const shorts = shortOf(shown);
  const total = shorts.reduce((sum, stems) => sum + stems, 0);
  return (
    <RibbonFocus
      weeks={said}
      winters={winters.map(({ key, words, plan }) => ({ key, words, short: inWholes(shortInAll(plan, role)) }))}
      coming={coming}
      shown={shown}
      worst={Math.max(0, shorts.indexOf(Math.max(...shorts)))}
      head={children}
    >
      <Ribbon
        label={`${role} stems week by week. One bloom is ${countOf(geometry.unit, "stem")}. ${total > 0 ? `${inWholes(total)} are short.` : "None is short."} The same numbers stand in the table below.`}
        mondays={mondays}
        winters={plans}
        frostDay={toDay(first.frostDay)}
      >
        {weeks.map(({ week }, index) => (
          <a
            key={week}
            className="week-hit"
            href={`/weeks/${week}`}
            data-week={index}
            aria-label={`${said[index].words}: ${said[index].figures[shown]}`}
          >
            <rect
              x={weekLeft(geometry, index)}
              y={geometry.top - 22}
              width={geometry.weekWidth}
              height={geometry.soil - geometry.top + 40}
            />
          </a>
        ))}
      </Ribbon>
      <RibbonKey unit={geometry.unit} hasWinters={winters.length + coming.length > 1} />
      <RibbonRows weeks={weeks} winters={plans} mostNeedStems={Math.max(1, ...needs)} />
    </RibbonFocus>
  );
}

const shortInAll = (plan: Plan, role: Role): number =>
  stemsShort(gapsAhead(plan).filter(({ need }) => need.role === role));

/** "177 needed, 13 covered, 164 short; 42 unclaimed" */
function figuresInWords({ needStems, shortStems, unclaimed }: RibbonWeek): string {
  const free = unclaimed.reduce((sum, { stems }) => sum + stems, 0);
  const short = shortStems > 0 ? `, ${inWholes(shortStems)} short` : "";
  const asked =
    needStems > 0
      ? `${inWholes(needStems)} needed, ${inWholes(needStems - shortStems)} covered${short}`
      : "nothing booked";
  return `${asked}; ${inWholes(free)} unclaimed`;
}

const reachInWords = ({ lowStems, highStems }: ReachBand): string =>
  `within reach ${inWholes(lowStems)} in a poor year, ${inWholes(highStems)} in a rich one`;
