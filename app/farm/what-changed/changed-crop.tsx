import type { ChangedCrop } from "#lib/domain/built-in-figures";
import type { Manner } from "#lib/domain/records/form";
import { type FigureWords, figureInWords } from "#lib/plan/words/figure-words";
import { OriginMark } from "../../ui/origin-mark";
import { type Column, Table } from "../../ui/table";
import { CropEffect } from "./effects.client";
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

type Props = { changed: ChangedCrop; farm: Manner; isOpen: boolean };

/** A crop whose built-in figures changed: what taking them would do to the season, and behind it each figure, old and new. */
export function ChangedCropFold({ changed: { crop, figures }, farm, isOpen }: Props) {
  return (
    <li>
      <details className="fold" open={isOpen}>
        <summary>
          <h2>{crop.name}</h2> <CropEffect cropId={crop.id} />
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
