import type { Gap } from "#lib/plan/road/gaps";
import type { LimitingCut } from "#lib/plan/road/limiting-cut";
import type { Plan } from "#lib/plan/road/plan";
import { coverInWords, reasonInWords } from "#lib/plan/words/gap-words";
import { countOf, inMoney, inWholes } from "#lib/plan/words/numbers";
import { ColourWords } from "../ui/colour-words";

/** One gap: what is short for whom, why, who shares the stems, and what could cover it. */
export function GapCard({ gap, plan, cut }: { gap: Gap; plan: Plan; cut: LimitingCut }) {
  const { need } = gap;
  const named = need.cropId === null ? null : plan.snapshot.crops.find((crop) => crop.id === need.cropId);
  const buyIn = plan.buying.find((line) => line.gap === gap);
  const sharers = [...new Set(cut.needIndexes.map((index) => plan.match.needs[index].booking))].filter(
    (booking) => booking.id !== need.booking.id,
  );
  return (
    <li className="card stack">
      <h3>
        <span className="short-word">{countOf(gap.shortStems, `${need.role} stem`)} short</span> for{" "}
        <a href={`/bookings/${need.booking.id}`}>{need.booking.client}</a>
      </h3>
      <p>
        {named && (
          <>
            {named.name}
            {need.cropOnly ? " only" : " if it can be"},{" "}
          </>
        )}
        <ColourWords colours={need.colours} />: {inWholes(gap.coveredStems)} of {inWholes(need.stems)} covered,{" "}
        {inWholes(gap.reachableStems)} within reach of all who ask.
      </p>
      <h4>Why</h4>
      <ul className="reasons">
        {gap.reasons.map(({ reason, stems }) => (
          <li key={reason}>{reasonInWords(reason, stems, need)}.</li>
        ))}
      </ul>
      {sharers.length > 0 && (
        <p className="small">
          {countOf(sharers.length, "other booking")} share these stems: together {inWholes(cut.needStems)} are asked and{" "}
          {inWholes(cut.supplyStems)} can be cut.{" "}
          {sharers.slice(0, 6).map((booking, index) => (
            <span key={booking.id}>
              {index > 0 && ", "}
              <a href={`/bookings/${booking.id}`}>{booking.client}</a>
            </span>
          ))}
          {sharers.length > 6 && ` and ${sharers.length - 6} more`}
        </p>
      )}
      <h4>What could cover it</h4>
      <ul className="reasons">
        {coverInWords(gap).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {buyIn && (
        <p className="small">
          {countOf(buyIn.bunchCount, "bunch", "bunches")} of {inWholes(buyIn.crop.bunchStems.count)} at the price of{" "}
          {buyIn.crop.name.toLowerCase()}: about {inMoney(buyIn.costCents)} ({buyIn.crop.buyInCents.mark}),{" "}
          {inWholes(buyIn.leftOverStems)} left over.
        </p>
      )}
    </li>
  );
}
