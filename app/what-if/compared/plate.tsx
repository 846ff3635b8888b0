import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { misfitInWords } from "#lib/plan/words/misfit-words";
import { inWholes } from "#lib/plan/words/numbers";
import { differenceInWords, frostOddsInWords } from "#lib/plan/words/supposed-words";
import { changeInWords } from "#lib/plan/words/what-if-words";
import { Form } from "../../ui/form.client";
import { deleteWhatIf } from "../actions";
import { Adopt } from "../adopt/adopt";
import type { Supposed } from "./compared-plans";
import { RibbonPair } from "./ribbon-pair";
import { WhoChanges } from "./who-changes";

const CHANGES_SHOWN = 6;

/** What is the same for every plate of a page. */
export type PlatePage = {
  readonly farm: Snapshot;
  readonly revision: number;
  readonly today: Day;
  readonly unit: number;
  /** On its own page a what-if has no way to it, and lists what it supposes elsewhere. */
  readonly isOwnPage?: boolean;
};

/** A what-if in one look: the stems it wins back or takes, one sentence, what it supposes, the button that makes it so, and the weeks that change. */
export function Plate({ supposed, page }: { supposed: Supposed; page: PlatePage }) {
  const { whatIf, difference, touched, bookings, misfits } = supposed;
  const { farm, isOwnPage } = page;
  const stems = difference.shortStems;
  const odds = frostOddsInWords(whatIf.changes, farm);
  return (
    <section className="plate what-if-plate" aria-labelledby={`what-if-${whatIf.id}`}>
      <div className="what-if-said">
        <h2 id={`what-if-${whatIf.id}`}>{whatIf.name}</h2>
        <b className={`figure-number ${stems > 0 ? "short-word" : stems < 0 ? "good-word" : "soft"}`}>
          {stems === 0 ? "±0" : `${stems < 0 ? "−" : "+"}${inWholes(Math.abs(stems))}`}
          <span className="visually-hidden"> stems short</span>
        </b>
        <p>
          {whatIf.changes.length === 0
            ? "Nothing is supposed yet: the season is as it stands."
            : differenceInWords(difference, touched.length)}
        </p>
        {!isOwnPage && <Supposes changes={whatIf.changes} farm={farm} />}
        {!isOwnPage &&
          misfits.map(({ changeIndex, misfit }) => (
            <p className="notice bad" key={changeIndex}>
              {misfitInWords(misfit)}
            </p>
          ))}
        <Adopt whatIf={whatIf} farm={farm} revision={page.revision} today={page.today} isWorse={stems > 0} />
        {!isOwnPage && (
          <div className="row what-if-tools no-print">
            <a href={`/what-if/${whatIf.id}`}>
              Change<span className="visually-hidden"> {whatIf.name}</span>
            </a>
            <Form
              action={deleteWhatIf}
              submit="Drop it"
              hidden={{ whatIfId: whatIf.id }}
              label={`Drop ${whatIf.name}`}
              isQuiet
            />
          </div>
        )}
      </div>
      <div className="what-if-shown">
        {touched.length > 0 && <RibbonPair weeks={touched} supposed="so supposed" unit={page.unit} />}
        <WhoChanges bookings={bookings} knownIds={new Set(farm.bookings.map(({ id }) => id))} />
        {odds && <p className="small">{odds}</p>}
      </div>
    </section>
  );
}

/** What is supposed: beds as their tags under one word, all else a line each. */
function Supposes({ changes, farm }: { changes: readonly Change[]; farm: Snapshot }) {
  const bedsOf = (kind: "bed-kept" | "bed-dug") =>
    changes.flatMap((change) => (change.kind === kind ? (farm.beds.find(({ id }) => id === change.bedId) ?? []) : []));
  const others = changes.filter(({ kind }) => kind !== "bed-kept" && kind !== "bed-dug");
  return (
    <>
      {(["bed-kept", "bed-dug"] as const).map((kind) => {
        const beds = bedsOf(kind);
        return (
          beds.length > 0 && (
            <p key={kind} className="supposed-beds">
              <span className="small">{kind === "bed-kept" ? "kept" : "dug"}</span>
              {beds.map(({ id, name }) => (
                <a key={id} className="bed-tag" href={`/beds/${id}`}>
                  {name}
                </a>
              ))}
            </p>
          )
        );
      })}
      {others.length > 0 && (
        <ul className="reasons">
          {others.slice(0, CHANGES_SHOWN).map((change) => (
            <li key={JSON.stringify(change)}>{changeInWords(change, farm)}</li>
          ))}
          {others.length > CHANGES_SHOWN && <li>and {others.length - CHANGES_SHOWN} more</li>}
        </ul>
      )}
    </>
  );
}
