import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { PLAIN, shown } from "#lib/domain/measures";
import type { Crop } from "#lib/domain/records/crop";
import { anchorColumns, type BloomCurve, CURVE } from "#lib/domain/records/curve";
import { formFields, type Manner } from "#lib/domain/records/form";
import type { Variety } from "#lib/domain/records/variety";
import { TREATMENT_WORDS, type Treatment } from "#lib/domain/words";
import { Form } from "../../ui/form.client";
import { SelectField } from "../../ui/form-fields.client";
import { RecordField } from "../../ui/record-field";
import { restoreCurve, saveCurve } from "./curve-actions";
import { CurveWeeks } from "./curve-weeks.client";

type Props = {
  crop: Crop;
  variety: Variety | null;
  /** The planting whose page it stands on: then its own curve is meant, unless she says otherwise. */
  plantingId?: number;
  treatment: Treatment;
  curve: BloomCurve | null;
  manner: Manner;
};

const ANCHORS = [
  { value: "day-of-year", label: "on a day of the year" },
  { value: "days-after-planting", label: "so many days after planting" },
];
const OWN_PLACE = { value: "", label: "on your own farm" };
const WEEKS_AT_FIRST = 6;
const AT_FIRST = { firstCutSpreadDays: 7, yieldSpread: 0.3, laterDays: 0, ends: "weeks" as const };

/** The bloom curve of a crop under a treatment, for one planting or one variety where it is given, or for all of the crop. Numbers that are changed become the farm's own. */
export function CurveForm({ crop, variety, plantingId, treatment, curve, manner }: Props) {
  const fields = formFields(CURVE, curve ? { ...curve, ...anchorColumns(curve.anchor) } : AT_FIRST, manner);
  const weeks = curve
    ? curve.stemsPerPlantByWeek.map((stems) => shown(PLAIN, stems, manner.decimalMark))
    : Array<string>(WEEKS_AT_FIRST).fill("");
  const scopes = [
    ...(plantingId === undefined ? [] : [{ value: "planting", label: "only this planting" }]),
    ...(variety ? [{ value: "variety", label: `only ${variety.name}` }] : []),
    { value: "crop", label: `all ${crop.name.toLowerCase()}` },
  ];
  return (
    <>
      <Form
        action={saveCurve}
        submit="Save the bloom curve"
        hidden={{
          curveId: curve?.id ?? "",
          cropId: crop.id,
          varietyId: variety?.id ?? "",
          plantingId: plantingId ?? "",
          treatment,
        }}
        label={`Bloom curve of ${crop.name}, ${TREATMENT_WORDS[treatment]}`}
      >
        <div className="fields">
          <SelectField name="isFor" label="For" value={scopes[0].value} options={scopes} />
          <SelectField
            name="anchor.kind"
            label="First cut comes"
            value={curve?.anchor.kind ?? "days-after-planting"}
            options={ANCHORS}
          />
          <RecordField {...fields.firstCut} />
          <RecordField {...fields.daysAfterPlanting} />
          <RecordField {...fields.sowingDays} />
          <RecordField {...fields.laterDays} />
          <RecordField {...fields.firstCutSpreadDays} />
          <RecordField {...fields.yieldSpread} />
          <RecordField {...fields.shareByAge} />
          <RecordField {...fields.lateLossShare} />
          <RecordField {...fields.saleableBySeason} />
          <RecordField {...fields.ends} />
          <RecordField {...fields.endHighC} />
          <CurveWeeks key={weeks.join("/")} weeks={weeks} mark={manner.decimalMark} />
        </div>
        <fieldset>
          <legend>Warmth</legend>
          <p className="hint">
            Where the farm has a climate, warmth moves the first cut with the planting day, the place and the year. The
            first cut above stays true for the day and place that it is known for.
          </p>
          <div className="fields">
            <RecordField {...fields.heatBaseC} />
            <RecordField {...fields.heatCeilingC} />
            <RecordField {...fields.heatLimitC} />
            <RecordField {...fields.heatFrom} />
            <RecordField {...fields.heatPlace} choices={[OWN_PLACE, ...fields.heatPlace.options]} />
          </div>
        </fieldset>
      </Form>
      {curve && canBeRestored(curve, crop) && (
        <Form
          action={restoreCurve}
          submit={
            curve.varietyId === null
              ? "Back to the built-in curve"
              : curve.plantingId === null
                ? `Back to the curve of all ${crop.name.toLowerCase()}`
                : "Back to the curve of the other plantings"
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
