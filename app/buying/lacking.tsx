import { stemsShort } from "#lib/plan/road/gaps";
import type { NotToBeHad } from "#lib/plan/road/not-to-be-had";
import { insteadInWords, lackInWords } from "#lib/plan/words/not-to-be-had-words";
import { countOf } from "#lib/plan/words/numbers";

/** Gaps told at first; the others are folded. */
const TOLD_AT_FIRST = 6;

/** What nobody sells in its colours and its month: which stems for whom, and what could be asked of the client instead. */
export function Lacking({ lacking }: { lacking: readonly NotToBeHad[] }) {
  if (lacking.length === 0) return null;
  return (
    <section aria-labelledby="lacking" className="notice bad">
      <h2 id="lacking">{countOf(stemsShort(lacking.map(({ gap }) => gap)), "stem")} that cannot be bought</h2>
      <Told lacking={lacking.slice(0, TOLD_AT_FIRST)} />
      {lacking.length > TOLD_AT_FIRST && (
        <details>
          <summary>{countOf(lacking.length - TOLD_AT_FIRST, "more gap")}</summary>
          <Told lacking={lacking.slice(TOLD_AT_FIRST)} />
        </details>
      )}
      <p className="note">
        When and in what colours a crop is to be had stands with each of <a href="/farm/crops">your crops</a>: from
        memory until you write your wholesaler’s.
      </p>
    </section>
  );
}

const Told = ({ lacking }: { lacking: readonly NotToBeHad[] }) => (
  <ul>
    {lacking.map((one) => (
      <li key={one.gap.needIndex}>
        <a href={`/bookings/${one.gap.need.booking.id}`}>{lackInWords(one)}</a>. {insteadInWords(one)}
      </li>
    ))}
  </ul>
);
