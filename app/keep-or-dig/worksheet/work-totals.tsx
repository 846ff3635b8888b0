import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { WinterTotals, WinterWorksheet } from "#lib/plan/winter/worksheet";
import { inTenths, inWholes } from "#lib/plan/words/numbers";
import { workTakesInWords } from "#lib/plan/words/task-words";
import { type Column, Table } from "../../ui/table";

/** What the winter takes, in all and bed by bed. */
export function WorkTotals({ sheet, units }: { sheet: WinterWorksheet; units: Units }) {
  const { beds, totals } = sheet;
  const { volume, area } = MEASURES[units];
  const leaves = (of: WinterTotals) => inTenths(of.leafCubicMetres * volume.shownPerStored);
  const tarp = (of: WinterTotals) => inWholes(of.tarpSquareMetres * area.shownPerStored);
  const column = (
    head: string,
    unit: string | undefined,
    figure: (of: WinterTotals) => string,
    phone?: "none",
  ): Column<(typeof beds)[number]> => ({
    head,
    unit,
    kind: "number",
    phone,
    cell: (bed) => (figure(bed) === "0" ? "–" : figure(bed)),
    foot: figure(totals),
  });
  const figures = [
    column(
      "Clumps",
      undefined,
      ({ keptClumpCount, dugClumpCount }) => inWholes(keptClumpCount + dugClumpCount),
      "none",
    ),
    column("Leaves", volume.word, leaves),
    column("Tarp", area.word, tarp),
    column("Hours", undefined, ({ hours }) => inTenths(hours)),
  ];
  return (
    <>
      <p>{workTakesInWords(sheet, units)}</p>
      <details className="fold prints-open">
        <summary>What the winter takes, bed by bed</summary>
        <Table
          caption="What the winter takes, bed by bed"
          isCaptionHidden
          className="work-totals"
          columns={[
            {
              head: "Bed",
              kind: "name",
              cell: (bed) => (
                <>
                  <a href={`/beds/${bed.bedId}`}>{bed.bedName}</a>, {isKept(bed) ? "kept" : "dug"}
                </>
              ),
              foot: "In all",
            },
            // What no bed takes any more has no column.
            ...figures.filter(({ foot }) => foot !== "0"),
          ]}
          rows={beds}
          keyOf={({ bedId }) => bedId}
          isNarrow
        />
      </details>
    </>
  );
}

const isKept = ({ fate }: WinterWorksheet["beds"][number]): boolean => fate === "kept";
