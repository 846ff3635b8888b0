import { inShort, isoWeekOf, toDay } from "#lib/domain/day";
import type { Role } from "#lib/domain/words";
import { type Gap, stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { gapsAhead } from "#lib/plan/road/to-come";
import { coverInWords } from "#lib/plan/words/gap-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { rankedGaps } from "#lib/plan/words/season-lead";
import { CountedMarks, CountedRow } from "../look/counted-row";
import { PaletteStrip } from "../ui/palette-strip";
import { bedsThatFill } from "./beds-that-fill";
import { ringUnit } from "./ring-unit";

/** Gaps shown one by one; the smaller ones stand in the ribbon's weeks. */
const SHOWN_COUNT = 12;
/** Beds named under a gap before it says how many more. */
const TAGS_SHOWN = 4;
/** How many steps of width there are. */
const WIDTHS = 10;

/** Where stems of a role are missing: the largest first, each as wide as it is short. `chosen` is the plan with the beds worth keeping, when that is known. */
export function GapCards({ plan, role, chosen }: { plan: Plan; role: Role; chosen: Plan | null }) {
  const ranked = rankedGaps(gapsAhead(plan), role);
  if (ranked.length === 0) return null;
  const shown = ranked.slice(0, SHOWN_COUNT);
  const rest = ranked.slice(SHOWN_COUNT);
  const [{ shortStems: most }] = ranked;
  const unit = ringUnit(most);
  return (
    <section aria-labelledby="gaps">
      <h2 id="gaps">
        Where {countOf(stemsShort(ranked), `${role} stem`)} {stemsShort(ranked) === 1 ? "is" : "are"} missing
      </h2>
      <p className="small">
        The largest first, as wide as it is short. Each ring is {countOf(unit, "stem")};{" "}
        {chosen ? "under the rings, the beds that would fill them if kept." : "under the rings, what could cover them."}
      </p>
      <CountedMarks />
      <ol className="gaps">
        {shown.map((gap) => (
          <li key={gap.needIndex} className={`gap wide-${Math.ceil((WIDTHS * gap.shortStems) / most)}`}>
            <GapHead gap={gap} />
            <CountedRow covered={[]} shortStems={gap.shortStems} stemsPerMark={unit} marksARow={10} />
            <Fill gap={gap} chosen={chosen} />
          </li>
        ))}
      </ol>
      {rest.length > 0 && (
        <p className="small">
          {countOf(rest.length, "smaller gap")}, {countOf(stemsShort(rest), "stem")} in all, stand in the weeks of the
          picture above.
        </p>
      )}
    </section>
  );
}

function GapHead({ gap: { need, shortStems } }: { gap: Gap }) {
  const day = toDay(need.eventDay);
  return (
    <a className="gap-head" href={`/weeks/${isoWeekOf(day)}`}>
      <b className="gap-count">
        {inWholes(shortStems)} <span className="visually-hidden">short for</span>
      </b>
      <span>
        <strong>{need.booking.client}</strong>
        <small>
          {inShort(day)} <PaletteStrip colours={need.colours} />
        </small>
      </span>
    </a>
  );
}

function Fill({ gap, chosen }: { gap: Gap; chosen: Plan | null }) {
  if (!chosen) return <p className="gap-fill">{coverInWords(gap)[0]}</p>;
  const { beds, leftStems } = bedsThatFill(gap, chosen);
  if (beds.length === 0) return <p className="gap-fill">No bed would fill it.</p>;
  return (
    <p className="gap-fill">
      {beds.slice(0, TAGS_SHOWN).map(({ id, name }) => (
        <a key={id} className="bed-tag" href={`/beds/${id}`}>
          {name}
        </a>
      ))}
      {beds.length > TAGS_SHOWN && <span>and {countOf(beds.length - TAGS_SHOWN, "more bed")}</span>}
      {leftStems > 0 && <span>{inWholes(leftStems)} stay short</span>}
    </p>
  );
}
