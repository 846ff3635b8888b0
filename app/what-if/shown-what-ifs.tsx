import type { WhatIf } from "#lib/domain/what-if";
import { COMPARED_AT_MOST } from "./compare-query";

/** Which what-ifs are shown, when there are more than fit side by side. */
export const ShownWhatIfs = ({ whatIfs, compared }: { whatIfs: readonly WhatIf[]; compared: readonly WhatIf[] }) => (
  <form method="get" action="/what-if" className="shown-what-ifs">
    <fieldset>
      <legend>
        {compared.length} of {whatIfs.length} are shown; {COMPARED_AT_MOST} find room
      </legend>
      {whatIfs.map(({ id, name }) => (
        <label className="check" key={id}>
          <input type="checkbox" name="with" value={id} defaultChecked={compared.some((shown) => shown.id === id)} />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
    <button type="submit">Show the ticked ones</button>
  </form>
);
