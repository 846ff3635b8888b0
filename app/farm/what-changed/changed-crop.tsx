import type { ChangedFigure } from "#lib/domain/built-in-figures";
import type { Manner } from "#lib/domain/records/form";
import type { CropOutcome } from "#lib/plan/what-if/figures-taken";
import { type FigureWords, figureInWords } from "#lib/plan/words/figure-words";
import { inWholes } from "#lib/plan/words/numbers";
import { OriginMark } from "../../ui/origin-mark";
import { type Column, Table } from "../../ui/table";
import { SettleButtons } from "./settle-buttons";

const COLUMNS: readonly Column<FigureWords>[] = [
  { head: "Figure", kind: "name", cell: ({ name }) => name },
  {
    head: "The farm has",
    cell: ({ was, wasFrom }) => (
      <>
        {was} <OriginMark origin={wasFrom} />
      </>
    ),
  },
  {
    head: "Built in today",
    cell: ({ is, isFrom }) => (
      <>
        <strong>{is}</strong> <OriginMark origin={isFrom} />
      </>
    ),
  },
];

/** A crop whose built-in figures changed: each old and new, and what taking them would do to the season. */
export function ChangedCropCard({ outcome, farm }: { outcome: CropOutcome; farm: Manner }) {
  const { crop, figures } = outcome.changed;
  return (
    <li>
      <h2>{crop.name}</h2>
      <p>
        <Effect {...outcome} />
      </p>
      <Table
        caption={`Figures of ${crop.name}`}
        isCaptionHidden
        columns={COLUMNS}
        rows={figures.map((figure: ChangedFigure) => figureInWords(figure, farm))}
        keyOf={({ name }) => name}
      />
      <SettleButtons crop={crop.id} name={crop.name} />
    </li>
  );
}

function Effect({ before, after }: CropOutcome) {
  if (before.cutStems === 0 && after.cutStems === 0 && before.shortStems === after.shortStems)
    return <>Not grown this season: nothing moves.</>;
  const cut =
    before.cutStems === after.cutStems
      ? `${inWholes(after.cutStems)} stems cut, as before`
      : `${inWholes(before.cutStems)} stems cut now, ${inWholes(after.cutStems)} with the new figures`;
  return before.shortStems === after.shortStems ? (
    <>{cut}; the season is no shorter and no better.</>
  ) : (
    <>
      {cut}; the season goes from {inWholes(before.shortStems)} stems short to{" "}
      <strong>{inWholes(after.shortStems)}</strong>.
    </>
  );
}
