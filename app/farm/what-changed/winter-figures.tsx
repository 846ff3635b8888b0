import { measureIn, shown } from "#lib/domain/measures";
import { WINTER_COSTS } from "#lib/domain/records/winter-costs";
import type { Snapshot } from "#lib/domain/snapshot";
import { FROM_MEMORY } from "#lib/domain/sourced";
import { type ChangedWinterFigure, changedWinterFigures } from "#lib/domain/winter-figures";
import { winterFiguresOutcome } from "#lib/plan/what-if/winter-figures-outcome";
import { inRoundMoney } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { OriginMark } from "../../ui/origin-mark";
import { type Column, Table } from "../../ui/table";
import { keepWinterFigures, takeWinterFigures } from "./winter-figure-actions";

type Props = { snapshot: Snapshot; seasonYear: number };

/** The built-in figures of the winter that changed since the farm was started: old and new, why, and what they would make of this winter. Nothing when they are settled. */
export function WinterFigures({ snapshot, seasonYear }: Props) {
  const changed = changedWinterFigures(snapshot.farm);
  if (changed.length === 0) return null;
  const { nowCents, thenCents } = winterFiguresOutcome(snapshot, seasonYear);
  return (
    <section aria-labelledby="winter-figures">
      <details className="fold" open>
        <summary>
          <h2 id="winter-figures">Keep or dig</h2>{" "}
          <span className="effect">
            the winter as the farm stands costs {inRoundMoney(nowCents)} now, {inRoundMoney(thenCents)} with the new
            figures
          </span>
        </summary>
        <Table
          caption="Figures of the winter"
          isCaptionHidden
          className="changed-figures"
          columns={columnsIn(snapshot)}
          rows={changed}
          keyOf={({ name }) => name}
        />
        <div className="row">
          <Form
            action={takeWinterFigures}
            submit="Take the new figures"
            label="Take the new figures of the winter"
            isQuiet
          />
          <Form action={keepWinterFigures} submit="Keep mine" label="Keep my figures of the winter" isQuiet />
        </div>
      </details>
    </section>
  );
}

function columnsIn({ farm: { units, decimalMark } }: Snapshot): readonly Column<ChangedWinterFigure>[] {
  const said = (name: ChangedWinterFigure["name"], stored: number) => {
    const measure = measureIn(units, WINTER_COSTS[name].measure);
    return `${shown(measure, stored, decimalMark)} ${measure.word}`.replace(/^(\S+) \$/, "$$$1");
  };
  return [
    { head: "Figure", kind: "name", cell: ({ name }) => WINTER_COSTS[name].label },
    { head: "The farm has", cell: ({ name, was }) => said(name, was) },
    {
      head: "Built in today",
      cell: ({ name, is }) => (
        <>
          <strong>{said(name, is)}</strong> <OriginMark origin={FROM_MEMORY} />
        </>
      ),
    },
    { head: "Why", cell: ({ why }) => why },
  ];
}
