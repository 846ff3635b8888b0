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

type Props = { outcome: CropOutcome; farm: Manner; isOpen: boolean };

/** A crop whose built-in figures changed: what taking them would do to the season, and behind it each figure, old and new. */
export function ChangedCropFold({ outcome, farm, isOpen }: Props) {
  const { crop, figures } = outcome.changed;
  return (
    <li>
      <details className="fold" open={isOpen}>
        <summary>
          <h2>{crop.name}</h2> <Effect {...outcome} />
        </summary>
        <Table
          caption={`Figures of ${crop.name}`}
          isCaptionHidden
          className="changed-figures"
          columns={COLUMNS}
          rows={figures.map((figure) => figureInWords(figure, farm))}
          keyOf={({ name }) => name}
        />
        <SettleButtons of={crop.id} name={crop.name} />
      </details>
    </li>
  );
}

function Effect({ before, after }: CropOutcome) {
  if (before.cutStems === 0 && after.cutStems === 0 && before.shortStems === after.shortStems)
    return <span className="effect">not grown this season: nothing moves</span>;
  const cut =
    before.cutStems === after.cutStems
      ? `${inWholes(after.cutStems)} stems cut, as before`
      : `${inWholes(before.cutStems)} stems cut now, ${inWholes(after.cutStems)} with the new figures`;
  return (
    <span className="effect">
      {cut};{" "}
      {before.shortStems === after.shortStems ? (
        "no stem more or less is short"
      ) : (
        <>
          {inWholes(before.shortStems)} stems short become <strong>{inWholes(after.shortStems)}</strong>
        </>
      )}
    </span>
  );
}
