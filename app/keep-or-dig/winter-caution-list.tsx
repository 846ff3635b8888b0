import { originInWords } from "#lib/domain/sourced";
import type { WinterCaution } from "#lib/plan/winter-cautions";
import { WINTER_SOURCES } from "#lib/plan/winter-sources";

const sources: Readonly<
  Record<string, { readonly title: string; readonly publisher: string; readonly address: string }>
> = WINTER_SOURCES;

/** Cautions with where each comes from. */
export const WinterCautionList = ({ cautions }: { cautions: readonly WinterCaution[] }) => (
  <ul className="caution-list">
    {cautions.map(({ words, origin }) => {
      const source = origin.source === null ? undefined : sources[origin.source];
      return (
        <li key={words}>
          {words}{" "}
          <span className="soft small">
            {source ? (
              <>
                {origin.mark}: <a href={source.address}>{source.title}</a>, {source.publisher}
              </>
            ) : (
              originInWords(origin)
            )}
          </span>
        </li>
      );
    })}
  </ul>
);
