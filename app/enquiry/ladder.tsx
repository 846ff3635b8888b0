import { countOf, inWholes } from "#lib/plan/words/numbers";
import { CountedRow } from "../look/counted-row";
import { ringUnit } from "../season/ring-unit";
import { ShortState } from "../ui/short-state";
import { StateSign } from "../ui/state-sign";
import type { AnswerView } from "./answer/answer-view";
import type { Rung } from "./answer/rungs";
import { lotsInWords } from "./lot-words";

/** Marks side by side on a rung. */
const MARKS_A_ROW = 28;

type Props = {
  view: AnswerView;
  rungs: readonly Rung[];
  noBuyIn: string;
  /** It is of the question before, and the new is on its way. */
  isStale: boolean;
  askWith: (colours: string) => void;
};

/** What could be done, a rung each: how many stems can then be promised, by what, and what is still short. */
export function Ladder({ view, rungs, noBuyIn, isStale, askWith }: Props) {
  const unit = ringUnit(view.needStems);
  return (
    <section aria-labelledby="offers" data-stale={isStale}>
      <h2 id="offers">What could be done</h2>
      {rungs.length > 0 && (
        <ol className="ladder enquiry-ladder">
          {rungs.map((rung) => (
            <RungRow key={rung.title} rung={rung} stemCount={view.stemCount} unit={unit} askWith={askWith} />
          ))}
        </ol>
      )}
      {noBuyIn && (
        <p>
          {rungs.length === 0 && "Nothing more is to be had for that day. "}
          {noBuyIn}
        </p>
      )}
      <p className="note">
        The number can be promised; a bloom is {countOf(unit, "stem")}, likely or bought in, and a ring {unit} short.
      </p>
    </section>
  );
}

type RungProps = { rung: Rung; stemCount: number; unit: number; askWith: (colours: string) => void };

function RungRow({ rung, stemCount, unit, askWith }: RungProps) {
  const { kind, title, words, lots, promisedStems, likelyStems, colours, missingStems, isBought } = rung;
  const { askWith: withColours } = rung;
  return (
    <li>
      <b className="ladder-count">{inWholes(promisedStems)}</b>
      <span>
        <strong>{title}</strong>
        <small className="ladder-words">
          {likelyStems > promisedStems && `${inWholes(likelyStems)} likely. `}
          {words || lotsInWords(lots)}
          {kind === "keep" && (
            <>
              {" "}
              <a href="/keep-or-dig">Keep or dig</a>
            </>
          )}
        </small>
      </span>
      <CountedRow
        covered={colours}
        shortStems={missingStems}
        stemsPerMark={unit}
        marksARow={MARKS_A_ROW}
        isBought={isBought}
      />
      <span className="rung-state">
        {likelyStems >= stemCount && promisedStems < stemCount ? (
          <AllLikely />
        ) : (
          <ShortState stems={stemCount - likelyStems} all={`all ${inWholes(stemCount)}`} />
        )}
        {withColours !== null && (
          <button type="button" className="quiet" onClick={() => askWith(withColours.colours)}>
            Ask with {withColours.added}
          </button>
        )}
      </span>
    </li>
  );
}

const AllLikely = () => (
  <span className="state risk">
    <StateSign of="risk" size={13} />
    all likely
  </span>
);
