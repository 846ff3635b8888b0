import type { Crop } from "#lib/domain/records/crop";
import { ROLES } from "#lib/domain/words";
import { countOf, inMoney, inTenths, inWholes } from "#lib/plan/words/numbers";

type Props = { crops: readonly Crop[]; varietyCounts: ReadonlyMap<number, number> };

/** Every crop on a line, two on a phone, under the role that it usually plays: its varieties and numbers. Those of the farm's own are bold. */
export const CropRows = ({ crops, varietyCounts }: Props) => (
  <>
    <p className="note crop-heads" aria-hidden="true">
      <span>Crop</span>
      <span>Varieties</span>
      <span>Hold</span>
      <span>In the field</span>
      <span>A bunch</span>
      <span>A bucket</span>
      <span>A stem</span>
    </p>
    {ROLES.map((role) => {
      const ofRole = crops.filter(({ usualRole }) => usualRole === role);
      return (
        ofRole.length > 0 && (
          <details key={role} className="fold crop-role" open>
            <summary>
              <svg className="gl plain-sign" width="20" height="20" aria-hidden="true">
                <use href={`#r-${role}`} />
              </svg>
              {role}: {countOf(ofRole.length, "crop")}
            </summary>
            <ul>
              {ofRole.map((crop) => (
                <li key={crop.id}>
                  <CropLine crop={crop} varietyCount={varietyCounts.get(crop.id) ?? 0} />
                </li>
              ))}
            </ul>
          </details>
        )
      );
    })}
  </>
);

const CropLine = ({ crop, varietyCount }: { crop: Crop; varietyCount: number }) => (
  <a className="crop-line" href={`/farm/crops/${crop.id}`}>
    <b>{crop.name}</b>
    <span className="crop-varieties">
      {varietyCount > 0 ? countOf(varietyCount, "variety", "varieties") : "none yet"}
    </span>
    <Figure of={crop.holdDays} words="held" unit="days" stretch={crop.stretchDays.count} />
    <Figure of={crop.fieldDays} words="in the field" unit="days" />
    <Figure of={crop.bunchStems} words="a bunch" />
    <Figure of={crop.bucketStems} words="a bucket" />
    <span className="crop-price">
      {crop.buyInCents.mark === "own" ? (
        <strong>{inMoney(crop.buyInCents.count)}</strong>
      ) : (
        inMoney(crop.buyInCents.count)
      )}
    </span>
  </a>
);

type FigureProps = { of: Crop["holdDays"]; words: string; unit?: string; stretch?: number };

/** A number of a crop; on a phone, and to readers, with the word of what it is. A hold with a stretch: "3 to 5 days". */
const Figure = ({ of: { count, mark }, words, unit, stretch = 0 }: FigureProps) => {
  const shown = unit ? inTenths(count) : inWholes(count);
  const most = stretch > count ? ` to ${inTenths(stretch)}` : "";
  return (
    <span className="crop-figure">
      {mark === "own" ? <strong>{shown}</strong> : shown}
      {most}
      {unit && ` ${count === 1 && !most ? unit.replace(/s$/, "") : unit}`} <span className="crop-word">{words}</span>
    </span>
  );
};
