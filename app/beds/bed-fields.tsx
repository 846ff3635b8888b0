import { type Day, inShort, toDay } from "#lib/domain/day";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { type BedField, type BedLine, colourWeeks, type WeekSpan } from "./bed-lines";
import { sprayInWords } from "./bed-words";
import { BloomStrip, StripMonths } from "./bloom-strip";

type Props = { readonly fields: readonly BedField[]; readonly weeks: WeekSpan; readonly today: Day };

/** Beds by field, a line a bed. On a phone a field is folded to its sum and its strip until its box is ticked. */
export const BedFields = ({ fields, weeks, today }: Props) =>
  fields.map((field, index) => (
    <section key={field.name} className="bed-field" aria-labelledby={`field-${index}`}>
      <div className="field-head">
        <h2 id={`field-${index}`}>{field.name}</h2>
        <StripMonths weeks={weeks} />
        <small className="number">first cut</small>
        <small className="number">stems</small>
        <label className="field-fold">
          <input type="checkbox" aria-label={`Show the beds of ${field.name}`} />
          <small>
            {countOf(field.lines.length, "bed")}, {countOf(sumOf(field.lines), "stem")}
          </small>
          <BloomStrip
            colours={colourWeeks(
              field.lines.flatMap(({ plantings }) => plantings),
              weeks,
            )}
            weeks={weeks}
          />
        </label>
      </div>
      <ul>
        {field.lines.map((line) => (
          <BedRow key={line.bed.id} line={line} weeks={weeks} today={today} />
        ))}
      </ul>
    </section>
  ));

const sumOf = (lines: readonly BedLine[]): number => lines.reduce((sum, { stems }) => sum + stems, 0);

function BedRow({ line: { bed, sign, plantings, stems, firstCut, colours }, weeks, today }: RowProps) {
  const spray = sprayInWords(bed, today);
  const flags = [...new Set([...bed.flags, ...plantings.flatMap(({ planting }) => planting.flags)])];
  const withoutCurve = plantings.filter(({ curve }) => !curve).length;
  return (
    <li>
      <a className="bed-line" href={`/beds/${bed.id}`}>
        <span className="bed-tag">
          <span className="visually-hidden">{bed.name.slice(0, bed.name.length - sign.length)}</span>
          {sign}
        </span>
        <span className="bed-crops">
          <Crops plantings={plantings} />
          {plantings.some(isKept) && <span className="tag">kept</span>}
          {flags.map((flag) => (
            <span key={flag} className="tag flag">
              {flag}
            </span>
          ))}
          {withoutCurve > 0 && <span className="short-word small">no bloom curve: 0 stems</span>}
          {spray && <span className="short-word small">{spray}</span>}
        </span>
        <BloomStrip colours={colours} weeks={weeks} />
        <span className="number small">{firstCut === null ? "" : inShort(toDay(firstCut))}</span>
        <b className="number">{stems > 0 && inWholes(stems)}</b>
      </a>
    </li>
  );
}

type RowProps = { readonly line: BedLine; readonly weeks: WeekSpan; readonly today: Day };

const isKept = ({ planting }: BedLine["plantings"][number]): boolean => planting.treatment === "kept-in-ground";

/** "Dahlia Lark Petticoat" of one variety, "Nigella, Scabiosa" of several. */
function Crops({ plantings }: { plantings: BedLine["plantings"] }) {
  if (plantings.length === 0) return <span className="soft">nothing planted</span>;
  const varieties = new Set(plantings.map(({ variety }) => variety.id));
  const crops = [...new Set(plantings.map(({ crop }) => crop.name))].join(", ");
  return (
    <span>
      {crops} {varieties.size === 1 && <span className="soft">{plantings[0].variety.name}</span>}
    </span>
  );
}
