import { isoWeekOf, toDay } from "#lib/domain/day";
import type { Strain } from "#lib/plan/road/capacity";
import { STRAIN_MENDS, strainInWords } from "#lib/plan/words/capacity-words";
import { countOf } from "#lib/plan/words/numbers";
import { StateSign } from "../ui/state-sign";

/** Strains that stand open; more of them are folded. */
const OPEN_STRAINS = 3;

type Props = { strains: readonly Strain[]; title: string; isLinked?: boolean };

/** Days and weeks that take more than the hands and the room there are, in words, each with what mends it. Nothing when none does. */
export function StrainList({ strains, title, isLinked = false }: Props) {
  if (strains.length === 0) return null;
  const rest = strains.slice(OPEN_STRAINS);
  return (
    <section aria-labelledby="strains">
      <h2 id="strains">{title}</h2>
      <Lines strains={strains.slice(0, OPEN_STRAINS)} isLinked={isLinked} />
      {rest.length > 0 && (
        <details className="fold">
          <summary>{countOf(rest.length, "more day or week", "more days and weeks")}</summary>
          <Lines strains={rest} isLinked={isLinked} />
        </details>
      )}
      <ul className="note">
        {[...new Set(strains.map(({ kind }) => kind))].map((kind) => (
          <li key={kind}>{STRAIN_MENDS[kind]}</li>
        ))}
      </ul>
    </section>
  );
}

const Lines = ({ strains, isLinked }: Pick<Props, "strains" | "isLinked">) => (
  <ul className="done-rows">
    {strains.map((strain) => (
      <li key={`${strain.kind} ${strain.day}`}>
        <span className="state risk told">
          <StateSign of="risk" />
          {isLinked ? (
            <a href={`/weeks/${isoWeekOf(toDay(strain.day))}`}>{strainInWords(strain)}</a>
          ) : (
            <span>{strainInWords(strain)}</span>
          )}
        </span>
      </li>
    ))}
  </ul>
);
