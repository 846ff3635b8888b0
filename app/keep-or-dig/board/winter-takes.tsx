import { MEASURES } from "#lib/domain/measures";
import type { Units } from "#lib/domain/words";
import type { WinterSum } from "#lib/plan/what-if/keep-board";
import type { WinterResource } from "#lib/plan/winter/limits";
import { inRoundMoney, inTenths, inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";
import type { AtHand } from "../planner-data";

type Props = {
  winters: readonly WinterSum[];
  keptCount: number;
  columns: readonly { readonly id: number; readonly name: string }[];
  units: Units;
  atHand: AtHand;
};

type Row = {
  words: string;
  of: (winter: WinterSum) => number;
  shown: (amount: number) => string;
  atHand?: number | null;
  resource?: WinterResource;
};

/** Hours, leaves and tarp that the winter takes against what is at hand, and the net cost. */
export function WinterTakes({ winters, keptCount, columns, units, atHand }: Props) {
  const { volume, area } = MEASURES[units];
  const rows: Row[] = [
    {
      words: "Hours of keeping and digging",
      of: ({ cost }) => cost.hours,
      shown: inTenths,
      atHand: atHand.hours,
      resource: "hours",
    },
    {
      words: `Leaves, ${volume.word}`,
      of: ({ cost }) => cost.leafCubicMetres,
      shown: (metric) => inTenths(metric * volume.shownPerStored),
      atHand: atHand.leafCubicMetres,
      resource: "leaves",
    },
    {
      words: `Tarp, ${area.word}`,
      of: ({ cost }) => cost.tarpSquareMetres,
      shown: (metric) => inWholes(metric * area.shownPerStored),
      atHand: atHand.tarpSquareMetres,
      resource: "tarp",
    },
    { words: "Plants to buy again, less tubers gained", of: ({ cost }) => cost.replacementCents, shown: inRoundMoney },
    { words: "Early crop foregone", of: ({ cost }) => cost.freeBedCents, shown: inRoundMoney },
    { words: "Net cost of the winter", of: ({ weighedCents }) => weighedCents, shown: inRoundMoney },
  ];
  const tooMany = atHand.keptBedCount !== null && keptCount > atHand.keptBedCount;
  return (
    <>
      <Table
        caption="What the winter takes"
        columns={[
          { head: "For it", kind: "name", cell: ({ words }) => words },
          ...winters.map(
            (winter, index): Column<Row> => ({
              head: columns[index].name,
              kind: "number",
              cell: ({ of, shown, atHand, resource }) => (
                <>
                  {shown(of(winter))}
                  {typeof atHand === "number" && resource && winter.runsShort.includes(resource) && (
                    <span className="short-word"> ▲ {shown(of(winter) - atHand)} too much</span>
                  )}
                </>
              ),
            }),
          ),
          {
            head: "At hand",
            kind: "number",
            cell: ({ shown, atHand }) =>
              atHand === null ? <span className="soft">as wanted</span> : atHand !== undefined && shown(atHand),
          },
        ]}
        rows={rows}
        keyOf={({ words }) => words}
      />
      {tooMany && (
        <p className="short-word">
          ▲ {keptCount} beds are ticked; your own cap is {atHand.keptBedCount}.
        </p>
      )}
      <p className="small soft">
        The net cost counts stems short at their buy-in price times how likely the booking is to want them, poorer fits
        and older stems in cents, and every winter cost. The totals above count whole bunches for all that is short.
        What is at hand is set on <a href="/farm#keeping">Farm</a>.
      </p>
    </>
  );
}
