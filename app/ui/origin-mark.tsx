import { SOURCES } from "#lib/domain/catalogue/sources";
import type { Source } from "#lib/domain/catalogue-types";
import { markInWords, type Origin, originInWords } from "#lib/domain/sourced";

/** How sure we are of a number: its mark, and the source by its title, linked where it has an address. */
export function OriginMark({ origin }: { origin: Origin }) {
  const source = origin.source === null ? undefined : SOURCES[origin.source];
  if (!source) return <span className="soft small">{originInWords(origin)}</span>;
  return (
    <span className="soft small">
      {markInWords(origin.mark)} <SourceLink source={source} /> ({source.publisher})
    </span>
  );
}

/** A source by its title, linked where it has an address. */
export const SourceLink = ({ source: { title, address } }: { source: Source }) =>
  address ? <a href={address}>{title}</a> : title;
