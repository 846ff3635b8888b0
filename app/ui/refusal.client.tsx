"use client";

import type { Problem } from "#lib/domain/problem";

type Props = { formId: string; labels: ReadonlyMap<string, string>; problems: readonly Problem[] };

/** Why a form was not saved: every problem, each with a link to its field. */
export const Refusal = ({ formId, labels, problems }: Props) => (
  <div className="notice bad" role="alert" tabIndex={-1}>
    <p>
      <strong>Not saved.</strong> {problems.length === 1 ? "One thing" : `${problems.length} things`} to mend; what you
      typed is still here.
    </p>
    <ul>
      {problems.map(({ place, message }) => {
        // "flags[2]" is a matter of the field "flags".
        const name = labels.has(place) ? place : place.replace(/\[[^[]*$/, "");
        const label = labels.get(name);
        return (
          <li key={`${place}: ${message}`}>
            {label ? (
              <>
                <a href={`#${formId}-${name}`}>{label}</a>: {message}
              </>
            ) : (
              message
            )}
          </li>
        );
      })}
    </ul>
  </div>
);
