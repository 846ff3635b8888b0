import type { Metadata } from "next";
import { addDays, type Day, withWeekday } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import { countOf } from "#lib/plan/words/numbers";
import { today } from "../../clock";
import { loadFarm } from "../../load";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { FarmTabs } from "../farm-tabs";
import { deleteCoolerStock } from "./cooler-actions";
import { CoolerForm } from "./cooler-form";

export const metadata: Metadata = { title: "Cooler" };

/** What stands in the cooler: supply like any other, from the day it was cut. */
export default function CoolerPage() {
  const { farm, coolerStock, varieties, crops } = loadFarm();
  const variety = new ById("variety", varieties);
  const crop = new ById("crop", crops);
  const now = today();
  const byName = new Intl.Collator("en", { numeric: true });
  const choices = varieties
    .map(({ id, cropId, name, colour }) => ({
      value: String(id),
      label: `${crop.get(cropId).name} ${name} (${colour})`,
    }))
    .sort((a, b) => byName.compare(a.label, b.label));
  return (
    <>
      <h1>Farm: cooler</h1>
      <FarmTabs open="/farm/cooler" />
      <p>
        Stems that stand ready and that the forecast does not hold: bought in, from another grower, or more than a bed
        was forecast. What your beds were forecast to give on its day is in the plan already, so entering it here would
        count it twice. They are matched before fresh ones, as long as their crop holds; take out what you have used or
        thrown away.
      </p>
      {coolerStock.length === 0 && <p>The cooler is empty.</p>}
      <ul className="cards">
        {coolerStock.map((stock) => {
          const { name, colour, cropId } = variety.get(stock.varietyId);
          const { name: cropName, holdDays } = crop.get(cropId);
          return (
            <li key={stock.id} className="card">
              <h2 className="card-title">
                {cropName} {name}, <ColourWord colour={colour} />
              </h2>
              <p>
                {countOf(stock.stemCount, "stem")}, cut {withWeekday(stock.cutOn)}.{" "}
                <HoldWords lastDay={addDays(stock.cutOn, Math.floor(holdDays.count))} today={now} />
              </p>
              <details>
                <summary>Change or take out</summary>
                <CoolerForm choices={choices} farm={farm} stock={stock} label={`${cropName} ${name}`} />
                <Form
                  action={deleteCoolerStock}
                  submit="Take out"
                  hidden={{ stockId: stock.id }}
                  label={`Take ${cropName} ${name} out`}
                  isQuiet
                />
              </details>
            </li>
          );
        })}
      </ul>
      <h2>Put stems in</h2>
      {choices.length === 0 ? (
        <p>
          First add a variety to <a href="/farm/crops">one of the crops</a>.
        </p>
      ) : (
        <CoolerForm key={coolerStock.length} choices={choices} farm={farm} label="Put stems in" />
      )}
    </>
  );
}

const HoldWords = ({ lastDay, today }: { lastDay: Day; today: Day }) =>
  lastDay >= today ? (
    <span>Good for events up to {withWeekday(lastDay)}.</span>
  ) : (
    <span className="short-word">Held too long since {withWeekday(lastDay)}: no longer matched.</span>
  );
