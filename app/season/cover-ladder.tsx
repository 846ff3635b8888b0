import { inShort, toDay } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { BuyIn } from "#lib/plan/road/buying";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { coverWays } from "#lib/plan/words/gap-words";
import { countOf, inMoney, inWholes } from "#lib/plan/words/numbers";
import { ShortState } from "../ui/short-state";
import { bedsThatFill } from "./beds-that-fill";

/** What could cover a gap, a rung each: how many stems it brings, what it is, and what would still be short. */
export function CoverLadder({ gap, chosen, buyIn }: { gap: Gap; chosen: Plan | null; buyIn: BuyIn | undefined }) {
  const fill = chosen && bedsThatFill(gap, chosen);
  return (
    <ol className="ladder">
      {fill && fill.beds.length > 0 && fill.leftStems < gap.shortStems && (
        <li>
          <b className="ladder-count">{inWholes(gap.shortStems - fill.leftStems)}</b>
          <span>
            <strong>
              Keep {allOf(fill.beds.map(({ name }) => name))} in the ground,{" "}
              <a href="/keep-or-dig">with the others worth keeping</a>
            </strong>
            <small className="ladder-words">kept over the winter they bloom weeks earlier</small>
          </span>
          <ShortState stems={fill.leftStems} />
        </li>
      )}
      {coverWays(gap).map(({ stems, name, words }) => (
        <li key={name}>
          <b className="ladder-count">{inWholes(stems)}</b>
          <span>
            <strong>{name}</strong>
            <small className="ladder-words">{words}</small>
          </span>
          <ShortState stems={Math.max(0, gap.shortStems - stems)} />
        </li>
      ))}
      <li>
        <b className="ladder-count">{inWholes(buyIn ? gap.shortStems : 0)}</b>
        <span>
          <strong>{buyIn ? `Buy in ${countOf(gap.shortStems, "stem")}` : "Nothing to buy in"}</strong>
          <small className="ladder-words">
            {buyIn ? (
              <>
                {countOf(buyIn.bunchCount, "bunch", "bunches")} of {inWholes(buyIn.crop.bunchStems.count)},{" "}
                {buyIn.colour && `${buyIn.colour} `}
                {buyIn.crop.name.toLowerCase()}: about {inMoney(buyIn.costCents)} ({buyIn.crop.buyInCents.mark}),{" "}
                {inWholes(buyIn.leftOverStems)} left over; order by {inShort(toDay(buyIn.orderBy))}
              </>
            ) : (
              <>
                none in these colours is in trade then: <a href="/buying">what could be asked instead</a>
              </>
            )}
          </small>
        </span>
        <ShortState stems={buyIn ? 0 : gap.shortStems} />
      </li>
    </ol>
  );
}
