import type { Bed } from "#lib/domain/bed";
import { type Day, inShort, toDay } from "#lib/domain/day";
import { TREATMENT_WORDS, type Units } from "#lib/domain/words";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { ColourWord } from "../ui/colour-words";
import { inWholes } from "../ui/numbers";
import { sizeInWords, sprayInWords } from "./bed-words";

type Props = {
  beds: readonly Bed[];
  forecasts: readonly PlantingForecast[];
  units: Units;
  today: Day;
  seasonYear: number;
};

/** Beds with their plantings of the season, a row each; a bed with nothing in it has a row of its own. */
export function BedRows({ beds, forecasts, units, today, seasonYear }: Props) {
  const inBed = new Map<number, PlantingForecast[]>(beds.map(({ id }) => [id, []]));
  for (const row of forecasts) inBed.get(row.bed.id)?.push(row);
  return (
    <table className="cards-on-phone bed-rows">
      <caption className="visually-hidden">Beds and plantings of {seasonYear}</caption>
      <thead>
        <tr>
          <th scope="col">Bed</th>
          <th scope="col">Planting</th>
          <th scope="col">Grown</th>
          <th scope="col" className="number">
            Plants
          </th>
          <th scope="col" className="number">
            First cut
          </th>
          <th scope="col" className="number">
            Cut, stems
          </th>
          <th scope="col" className="number">
            Lost in field, stems
          </th>
          <th scope="col" className="number">
            To frost, stems
          </th>
        </tr>
      </thead>
      <tbody>
        {beds.flatMap((bed) => {
          const rows = inBed.get(bed.id) ?? [];
          const head = <BedHead bed={bed} units={units} today={today} />;
          if (rows.length === 0)
            return [
              <tr key={`bed ${bed.id}`}>
                <th scope="row">{head}</th>
                <td colSpan={7} className="soft">
                  nothing planted in {seasonYear}: <a href={`/beds/${bed.id}#add`}>plant {bed.name}</a>
                </td>
              </tr>,
            ];
          return rows.map((row) => <PlantingRow key={`planting ${row.planting.id}`} row={row} head={head} />);
        })}
      </tbody>
    </table>
  );
}

const BedHead = ({ bed, units, today }: { bed: Bed; units: Units; today: Day }) => {
  const spray = sprayInWords(bed, today);
  return (
    <>
      <a href={`/beds/${bed.id}`}>{bed.name}</a> <span className="soft small">{sizeInWords(bed, units)}</span>
      {bed.flags.map((flag) => (
        <span key={flag}>
          {" "}
          <span className="tag">{flag}</span>
        </span>
      ))}
      {spray && <span className="short-word small"> {spray}</span>}
    </>
  );
};

const PlantingRow = ({ row, head }: { row: PlantingForecast; head: React.ReactNode }) => (
  <tr>
    <th scope="row">{head}</th>
    <td data-label="Planting">
      {row.crop.name} {row.variety.name}, <ColourWord colour={row.variety.colour} />
      {row.planting.flags.map((flag) => (
        <span key={flag}>
          {" "}
          <span className="tag">{flag}</span>
        </span>
      ))}
    </td>
    <td data-label="Grown">{TREATMENT_WORDS[row.planting.treatment]}</td>
    <td className="number" data-label="Plants">
      {inWholes(row.planting.plantCount)}
    </td>
    {row.curve ? (
      <>
        <td className="number" data-label="First cut">
          {row.cutDays.length > 0 ? inShort(toDay(row.cutDays[0])) : "never"}
        </td>
        <td className="number" data-label="Cut, stems">
          {inWholes(row.cutStems.reduce((sum, stems) => sum + stems, 0))}
        </td>
        <td className="number" data-label="Lost in field, stems">
          {inWholes(row.lostInFieldStems)}
        </td>
        <td className="number" data-label="To frost, stems">
          {inWholes(row.lostToFrostStems)}
        </td>
      </>
    ) : (
      <td colSpan={4} className="short-word">
        no bloom curve for this way of growing: forecast at 0 stems
      </td>
    )}
  </tr>
);
