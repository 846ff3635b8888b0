"use client";

import { type FormEvent, useState } from "react";
import type { ListedBed } from "./listed-beds";

type Props = {
  readonly made: string;
  readonly beds: readonly ListedBed[];
  readonly onAnswer: (sprayedBedIds: readonly number[]) => void;
};

/** Asked before an old list goes on: what was sprayed since it was made is not on it. */
export function SprayQuestion({ made, beds, onAnswer }: Props) {
  const [chosen, setChosen] = useState<readonly number[]>([]);
  const answer = (event: FormEvent) => {
    event.preventDefault();
    onAnswer(chosen);
  };
  return (
    <form className="notice bad spray-question" onSubmit={answer} aria-labelledby="spray-question">
      <h2 id="spray-question">Was a bed sprayed since {made}?</h2>
      <p>
        This list was made before today’s first picking, and there is no newer one without signal. A bed that was
        sprayed since stays closed for as long as the label and local rules say.
      </p>
      <button type="button" className="main" onClick={() => onAnswer([])} disabled={chosen.length > 0}>
        None was sprayed
      </button>
      <fieldset>
        <legend>Or these were</legend>
        {beds.map(({ id, name }) => (
          <label key={id} className="tick">
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={({ target }) =>
                setChosen(target.checked ? [...chosen, id] : chosen.filter((one) => one !== id))
              }
            />{" "}
            {name}
          </label>
        ))}
      </fieldset>
      <button type="submit" disabled={chosen.length === 0}>
        Close these beds
      </button>
    </form>
  );
}
