import { inShort, toDay } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import { warmthOf } from "#lib/plan/road/first-cut";
import { forecastPlanting, type PlantingForecast } from "#lib/plan/road/forecast";
import { curveFinder, grownBy, replantedOn } from "#lib/plan/road/grown";
import type { Plan } from "#lib/plan/road/plan";
import { DUG, KEPT } from "#lib/plan/winter/beds";
import { inWholes } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { Table } from "../../ui/table";
import { keepOrDig } from "./planting-actions";

/** For a crop that can winter in the ground: both futures side by side, and the button that changes from one to the other. */
export function KeepSwitch({ row, plan }: { row: PlantingForecast; plan: Plan }) {
  const { planting, crop, variety } = row;
  const { farm, curves, weather } = plan.snapshot;
  if (!crop.overwinters) return null;
  const curveFor = curveFinder(curves);
  const warmth = warmthOf(farm, weather);
  const future = (treatment: typeof DUG, plantedOn: typeof planting.plantedOn) =>
    outcome(
      forecastPlanting(
        grownBy({ ...row, planting: { ...planting, treatment, plantedOn } }, curveFor, warmth),
        farm,
        plan.frostDay,
      ),
    );
  const futures = [
    { treatment: DUG, name: "Dug and replanted", ...future(DUG, replantedOn(planting)), button: "Dig and replant" },
    { treatment: KEPT, name: "Kept in the ground", ...future(KEPT, planting.plantedOn), button: "Keep in the ground" },
  ];
  return (
    <Form action={keepOrDig} hidden={{ plantingId: planting.id }} label={`Keep or dig ${crop.name} ${variety.name}`}>
      <Table
        caption="Over winter"
        className="keep-switch"
        columns={[
          { head: "Future", kind: "name", cell: ({ name }) => name },
          { head: "First cut", kind: "number", cell: ({ firstCut }) => firstCut },
          { head: "Cut", unit: "stems", kind: "number", cell: ({ stems }) => inWholes(stems) },
          {
            head: "Choose",
            kind: "tool",
            cell: ({ treatment, curve, button }) =>
              planting.treatment === treatment ? (
                <span className="good-word">✓ as it is</span>
              ) : (
                <button type="submit" name="treatment" value={treatment} disabled={!curve}>
                  {button}
                </button>
              ),
          },
        ]}
        rows={futures}
        keyOf={({ treatment }) => treatment}
      />
      <p className="hint">
        Kept stems reckon with your own number for winter survival. What keeping and digging cost stands on{" "}
        <a href="/keep-or-dig">Keep or dig</a>.
      </p>
    </Form>
  );
}

const outcome = ({
  curve,
  cutDays,
  cutStems,
}: PlantingForecast): { curve: BloomCurve | null; firstCut: string; stems: number } => ({
  curve,
  firstCut: curve === null ? "no bloom curve" : cutDays.length > 0 ? inShort(toDay(cutDays[0])) : "never",
  stems: cutStems.reduce((sum, stems) => sum + stems, 0),
});
