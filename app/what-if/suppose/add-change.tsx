import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { AddAtHand } from "./add-at-hand";
import { AddBeds } from "./add-beds";
import { AddBooking } from "./add-booking";
import { AddPlanting } from "./add-planting";
import { AddWeather } from "./add-weather";

/** What can be supposed, in groups. */
export const GROUPS = ["beds", "weather", "bookings", "plantings", "at-hand"] as const;
type Group = (typeof GROUPS)[number];

const GROUP_WORDS: Record<Group, string> = {
  beds: "Beds kept or dug",
  weather: "Frost, season, yield",
  bookings: "Bookings",
  plantings: "Plantings",
  "at-hand": "Leaves, tarp, hours",
};

type Props = { whatIf: WhatIf; farm: Snapshot; wouldBe: Snapshot; group: Group };

/** The short forms that add a change, a group at a time. */
export function AddChange({ whatIf, farm, wouldBe, group }: Props) {
  return (
    <section aria-labelledby="add">
      <h2 id="add">Suppose</h2>
      <ul className="tabs" aria-label="What to suppose">
        {GROUPS.map((name) => (
          <li key={name}>
            <a href={`/what-if/${whatIf.id}?add=${name}#add`} aria-current={name === group ? "true" : undefined}>
              {GROUP_WORDS[name]}
            </a>
          </li>
        ))}
      </ul>
      {group === "beds" && <AddBeds whatIf={whatIf} farm={farm} wouldBe={wouldBe} />}
      {group === "weather" && <AddWeather whatIf={whatIf} farm={farm} />}
      {group === "bookings" && <AddBooking whatIf={whatIf} farm={farm} />}
      {group === "plantings" && <AddPlanting whatIf={whatIf} farm={farm} />}
      {group === "at-hand" && <AddAtHand whatIf={whatIf} farm={farm} />}
    </section>
  );
}
