import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { PERCENT, PLAIN, shown } from "#lib/domain/measures";
import type { DecimalMark } from "#lib/domain/read-number";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Variety } from "#lib/domain/records/variety";
import { TREATMENT_WORDS, type Treatment } from "#lib/domain/words";
import { Form } from "../../ui/form.client";
import { NumberField, SelectField, TextField } from "../../ui/form-fields.client";
import { restoreCurve, saveCurve } from "./curve-actions";
import { CurveWeeks } from "./curve-weeks.client";

type Props = { crop: Crop; variety: Variety | null; treatment: Treatment; curve: BloomCurve | null; mark: DecimalMark };

const ANCHORS = [
  { value: "day-of-year", label: "on a day of the year" },
  { value: "days-after-planting", label: "so many days after planting" },
];
const WEEKS_AT_FIRST = 6;

/** The bloom curve of a crop under a treatment, for all of it or for one variety. Numbers that are changed become the farm's own. */
export function CurveForm({ crop, variety, treatment, curve, mark }: Props) {
  const anchor = curve?.anchor;
  const weeks = curve
    ? curve.stemsPerPlantByWeek.map((stems) => shown(PLAIN, stems, mark))
    : Array<string>(WEEKS_AT_FIRST).fill("");
  const scopes = [
    { value: "crop", label: `all ${crop.name.toLowerCase()}` },
    ...(variety ? [{ value: "variety", label: `only ${variety.name}` }] : []),
  ];
  return (
    <>
      <Form
        action={saveCurve}
        submit="Save the bloom curve"
        hidden={{ curveId: curve?.id ?? "", cropId: crop.id, varietyId: variety?.id ?? "", treatment }}
        label={`Bloom curve of ${crop.name}, ${TREATMENT_WORDS[treatment]}`}
      >
        <div className="fields">
          <SelectField name="isFor" label="For" value={curve?.varietyId ? "variety" : "crop"} options={scopes} />
          <SelectField
            name="anchor.kind"
            label="First cut comes"
            value={anchor?.kind ?? "days-after-planting"}
            options={ANCHORS}
          />
          <TextField
            name="anchor.firstCut"
            label="First cut"
            unit="month-day"
            value={anchor?.kind === "day-of-year" ? anchor.firstCut : ""}
            hint="Written 06-05 for the 5th of June. Only for a day of the year."
          />
          <NumberField
            name="anchor.days"
            label="From planting to first cut"
            unit="days"
            value={anchor?.kind === "days-after-planting" ? String(anchor.days) : ""}
            hint="Only for days after planting."
          />
          <NumberField
            name="firstCutSpreadDays"
            label="Spread of the first cut"
            unit="days"
            value={curve ? shown(PLAIN, curve.firstCutSpreadDays, mark) : "7"}
            hint="Standard deviation: two seasons in three fall within it."
          />
          <NumberField
            name="yieldSpread"
            label="Spread of yield"
            unit="%"
            value={curve ? shown(PERCENT, curve.yieldSpread, mark) : "30"}
            hint="How far a season’s stems vary around the expected: 25 % is a quarter."
          />
          <CurveWeeks key={weeks.join("/")} weeks={weeks} mark={mark} />
        </div>
      </Form>
      {curve && canBeRestored(curve, crop) && (
        <Form
          action={restoreCurve}
          submit={
            curve.varietyId === null
              ? "Back to the built-in curve"
              : `Back to the curve of all ${crop.name.toLowerCase()}`
          }
          hidden={{ curveId: curve.id }}
          isQuiet
        />
      )}
    </>
  );
}

/** True when something else would count without the farm's own numbers. */
function canBeRestored(curve: BloomCurve, crop: Crop): boolean {
  if (curve.varietyId !== null) return true;
  const isOwn = curve.timingOrigin.mark === "own" || curve.yieldOrigin.mark === "own";
  const builtIn = CATALOGUE.find(({ name }) => name === crop.name);
  return isOwn && builtIn?.curves.some(({ treatment }) => treatment === curve.treatment) === true;
}
