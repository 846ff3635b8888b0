import type { ReactNode } from "react";
import { type Day, inShort, toDay } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import { TREATMENT_WORDS, type Units } from "#lib/domain/words";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";
import { sizeInWords, sprayInWords } from "./bed-words";

type Props = {
  beds: readonly Bed[];
  forecasts: readonly PlantingForecast[];
  units: Units;
  today: Day;
  seasonYear: number;
};

/** A bed with one of its plantings, or with none. */
type Row = { readonly bed: Bed; readonly planting: PlantingForecast | null };

/** Beds with their plantings of the season, a row each; a bed with nothing in it has a row of its own. */
export function BedRows({ beds, forecasts, units, today, seasonYear }: Props) {
  const inBed = new Map<number, PlantingForecast[]>(beds.map(({ id }) => [id, []]));
  for (const row of forecasts) inBed.get(row.bed.id)?.push(row);
  const rows = beds.flatMap((bed): Row[] => {
    const plantings = inBed.get(bed.id) ?? [];
    return plantings.length > 0 ? plantings.map((planting) => ({ bed, planting })) : [{ bed, planting: null }];
  });
  return (
    <Table
      caption={`Beds and plantings of ${seasonYear}`}
      isCaptionHidden
      className="bed-rows"
      columns={[
        { head: "Bed", kind: "name", cell: ({ bed }) => <BedHead bed={bed} units={units} today={today} /> },
        ...PLANTING_COLUMNS,
      ]}
      rows={rows}
      keyOf={({ bed, planting }) => (planting ? `planting ${planting.planting.id}` : `bed ${bed.id}`)}
      insteadOf={({ bed, planting }) => insteadOf(bed, planting, seasonYear)}
    />
  );
}

/** The column from which a planting without a bloom curve has nothing to show. */
const FIRST_CUT_AT = 4;

function insteadOf(bed: Bed, planting: PlantingForecast | null, seasonYear: number) {
  if (!planting) {
    const words = (
      <span className="soft">
        nothing planted in {seasonYear}: <a href={`/beds/${bed.id}#add`}>plant {bed.name}</a>
      </span>
    );
    return { from: 1, words };
  }
  if (planting.curve) return null;
  const words = <span className="short-word">no bloom curve for this way of growing: forecast at 0 stems</span>;
  return { from: FIRST_CUT_AT, words };
}

/** A column of plantings; a bed without one never comes to it. */
const ofPlanting = (
  column: Omit<Column<Row>, "cell">,
  cell: (planting: PlantingForecast) => ReactNode,
): Column<Row> => ({ ...column, cell: ({ planting }) => planting && cell(planting) });

const PLANTING_COLUMNS: readonly Column<Row>[] = [
  ofPlanting({ head: "Planting" }, ({ crop, variety, planting }) => (
    <>
      {crop.name} {variety.name}, <ColourWord colour={variety.colour} />
      <Flags flags={planting.flags} />
    </>
  )),
  ofPlanting({ head: "Grown" }, ({ planting }) => TREATMENT_WORDS[planting.treatment]),
  ofPlanting({ head: "Plants", kind: "number" }, ({ planting }) => inWholes(planting.plantCount)),
  ofPlanting({ head: "First cut", kind: "number" }, ({ cutDays }) =>
    cutDays.length > 0 ? inShort(toDay(cutDays[0])) : "never",
  ),
  ofPlanting({ head: "Cut", unit: "stems", kind: "number" }, ({ cutStems }) =>
    inWholes(cutStems.reduce((sum, stems) => sum + stems, 0)),
  ),
  ofPlanting({ head: "Lost in field", unit: "stems", kind: "number" }, (row) => inWholes(row.lostInFieldStems)),
  ofPlanting({ head: "To frost", unit: "stems", kind: "number" }, (row) => inWholes(row.lostToFrostStems)),
];

const BedHead = ({ bed, units, today }: { bed: Bed; units: Units; today: Day }) => {
  const spray = sprayInWords(bed, today);
  return (
    <>
      <a href={`/beds/${bed.id}`}>{bed.name}</a> <span className="soft small">{sizeInWords(bed, units)}</span>
      <Flags flags={bed.flags} />
      {spray && <span className="short-word small"> {spray}</span>}
    </>
  );
};

const Flags = ({ flags }: { flags: readonly string[] }) =>
  flags.map((flag) => (
    <span key={flag}>
      {" "}
      <span className="tag">{flag}</span>
    </span>
  ));
