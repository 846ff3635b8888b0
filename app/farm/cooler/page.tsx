import type { Metadata } from "next";
import { addDays, type Day, withWeekday } from "#lib/domain/day";
import { ById } from "#lib/domain/snapshot";
import { type Hold, hasStretch, holdOf, isTooShort } from "#lib/plan/road/hold-window";
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
          const ofCrop = crop.get(cropId);
          const { name: cropName } = ofCrop;
          return (
            <li key={stock.id} className="card">
              <h2 className="card-title">
                {cropName} {name}, <ColourWord colour={colour} />
              </h2>
              <p>
                {countOf(stock.stemCount, "stem")}, cut {withWeekday(stock.cutOn)}.{" "}
                <HoldWords cutOn={stock.cutOn} hold={holdOf(ofCrop, farm)} leadDays={farm.leadDays} today={now} />
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

type HoldProps = { cutOn: Day; hold: Hold; leadDays: number; today: Day };

function HoldWords({ cutOn, hold, leadDays, today }: HoldProps) {
  const [lastGood, lastDay] = [hold.days, hold.stretchDays].map((days) => addDays(cutOn, Math.floor(days)));
  if (isTooShort(hold, leadDays))
    return <span className="short-word">It does not keep until an event: none can have it.</span>;
  if (lastDay < today)
    return <span className="short-word">Held too long since {withWeekday(lastDay)}: no longer matched.</span>;
  return (
    <span>
      Good for events up to {withWeekday(lastGood)}
      {hasStretch(hold) && `, at a stretch to ${withWeekday(lastDay)}`}.
    </span>
  );
}
