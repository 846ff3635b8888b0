import { MEASURES, shownOrEmpty } from "#lib/domain/measures";
import type { Snapshot } from "#lib/domain/snapshot";
import { RESOURCES, type Resource, type WhatIf } from "#lib/domain/what-if";
import { atHandMeasure } from "#lib/plan/words/what-if-words";
import { NumberField } from "../../ui/form-fields.client";
import { AddForm } from "./add-form";

const TITLES: Record<Resource, string> = {
  leaves: "Leaves at hand",
  tarp: "Tarp at hand",
  hours: "Hours at hand",
};

/** What a winter may use up. */
export function AddAtHand({ whatIf, farm }: { whatIf: WhatIf; farm: Snapshot }) {
  const { units, decimalMark, winter } = farm.farm;
  const measures = atHandMeasure(MEASURES[units]);
  const now: Record<Resource, number | null> = {
    leaves: winter.leafCubicMetresAtHand,
    tarp: winter.tarpSquareMetresAtHand,
    hours: winter.hoursAtHand,
  };
  return (
    <>
      <p className="hint">
        These limit what <a href="/keep-or-dig">Keep or dig</a> proposes. The weeks below do not move by them.
      </p>
      <div className="cards">
        {RESOURCES.map((resource) => (
          <AddForm
            key={resource}
            whatIf={whatIf}
            kind="at-hand-set"
            title={TITLES[resource]}
            submit={`Add the ${resource}`}
          >
            <input type="hidden" name="resource" value={resource} />
            <NumberField
              name="atHand"
              label={TITLES[resource]}
              unit={measures[resource].word}
              value={shownOrEmpty(measures[resource], now[resource], decimalMark)}
              hint="Left empty, as much as wanted."
            />
          </AddForm>
        ))}
      </div>
    </>
  );
}
