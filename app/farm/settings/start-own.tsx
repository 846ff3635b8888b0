import type { Snapshot } from "#lib/domain/snapshot";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { CheckField } from "../../ui/form-checks.client";
import { TextField } from "../../ui/form-fields.client";
import { startOwnFarm } from "./settings-actions";

/** From the invented farm to one's own: a name and, if wanted, empty ground. */
export const StartOwn = ({ farm, beds, plantings, bookings, coolerStock }: Snapshot) => (
  <section className="figure-block" aria-labelledby="start">
    <h2 id="start">Start my own farm</h2>
    <p className="note">
      {farm.isInvented ? "All that you see is invented. " : "This is a farm of your own already. "}
      Crops, bloom curves, recipes and settings stay, for you to overrule. It is one change: the Saved bar or the
      history takes it back.
    </p>
    <Form action={startOwnFarm} submit="Start my own farm" label="Start my own farm" isQuiet={!farm.isInvented}>
      <div className="fields">
        <TextField name="name" label="Your farm’s name" value={farm.isInvented ? "" : farm.name} isWide />
      </div>
      <CheckField
        name="empties"
        label="Empty the beds, plantings, bookings and cooler stock"
        isChecked={farm.isInvented}
        hint={`${countOf(beds.length, "bed")}, ${countOf(plantings.length, "planting")}, ${countOf(bookings.length, "booking")} and ${countOf(coolerStock.length, "line")} of cooler stock would go, and the varieties with them${farm.isInvented ? ", with the invented weather and the climate" : ""}.`}
      />
    </Form>
  </section>
);
