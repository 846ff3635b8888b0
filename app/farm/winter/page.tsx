import type { Metadata } from "next";
import { formFields } from "#lib/domain/records/form";
import { WINTER_COSTS, type WinterCosts } from "#lib/domain/records/winter-costs";
import { loadFarm } from "../../load";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { FarmTabs } from "../farm-tabs";
import { saveWinter } from "../settings/settings-actions";

export const metadata: Metadata = { title: "Winter costs" };

type Group = { readonly title: string; readonly hint?: string; readonly names: readonly (keyof WinterCosts)[] };

/** The numbers of the winter in groups as they are thought of. */
const GROUPS: readonly Group[] = [
  {
    title: "Work",
    names: [
      "wageCentsPerHour",
      "digClumpsPerHour",
      "divideClumpsPerHour",
      "replantTubersPerHour",
      "coverHoursPerSquareMetre",
    ],
  },
  {
    title: "Tubers and storage",
    names: ["storageCentsPerClump", "storageLossShare", "divisionsPerClump", "tuberCents", "tubersWantedShare"],
  },
  {
    title: "Keeping in the ground",
    names: ["leafDepthMetres", "leafCentsPerCubicMetre", "tarpCentsPerSquareMetre", "freeBedCentsPerSquareMetre"],
  },
  {
    title: "What is at hand",
    hint: "Leave a field empty for as much as is wanted.",
    names: ["leafCubicMetresAtHand", "tarpSquareMetresAtHand", "hoursAtHand", "keepShareAtMost"],
  },
];

/** What keeping and digging cost, and what is at hand for it. */
export default function WinterPage() {
  const { farm } = loadFarm();
  const fields = formFields(WINTER_COSTS, farm.winter, { ...farm, root: "winter." });
  return (
    <>
      <h1>Farm: winter costs</h1>
      <FarmTabs open="/farm/winter" />
      <p>
        The sums of <a href="/keep-or-dig">Keep or dig</a> rest on these. Where no source is named, the number to start
        from is <em>from memory</em>: put in your own.
      </p>
      <Form action={saveWinter} submit="Save the winter costs" label="Winter costs">
        <fieldset>
          <legend>Survival in the ground</legend>
          <div className="fields">
            <RecordField {...fields.winterSurvivalShare} isWide />
          </div>
        </fieldset>
        {GROUPS.map(({ title, hint, names }) => (
          <fieldset key={title}>
            <legend>{title}</legend>
            {hint && <p className="hint">{hint}</p>}
            <div className="fields">
              {names.map((name) => (
                <RecordField key={name} {...fields[name]} />
              ))}
            </div>
          </fieldset>
        ))}
      </Form>
    </>
  );
}
