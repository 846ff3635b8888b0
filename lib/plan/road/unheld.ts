import { groupsOf } from "#lib/domain/groups-of";
import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { NEAR_DAYS } from "./gaps";
import { type Hold, isTooShort } from "./hold-window";
import type { Match } from "./match";

/**
 * A crop of which no stem that is cut by the farm's habit still keeps when an event comes [M1]: its hold, and the stems of a plan that serve hardly anybody for it. `variety` is the one that says
 * so of itself, null where the crop does.
 */
export type Unheld = {
  readonly crop: Crop;
  readonly variety: Variety | null;
  readonly hold: Hold;
  readonly stems: number;
  /** Whether something is asked for of which the last cut is late enough for it: what is worn, or a booking with days of its own. */
  readonly servesSome: boolean;
};

/** The crops of a match that are cut, or stand in the cooler, and keep for less than the days from the farm's last cut to an event; in order of crop, then of variety. */
export function unheldCrops({ farm, crops }: Pick<Snapshot, "farm" | "crops">, { supplies, needs }: Match): Unheld[] {
  const tooShort = supplies.filter(({ hold }) => isTooShort(hold, farm.leadDays));
  if (tooShort.length === 0) return [];
  return crops.flatMap((crop) => {
    const ofCrop = tooShort.filter((supply) => supply.crop.id === crop.id);
    const byWord = groupsOf(ofCrop, ({ variety }) =>
      variety.holdDays === null && variety.stretchDays === null ? null : variety,
    );
    return [...byWord].map(([variety, ofWord]) => ({
      ...{ crop, variety, hold: ofWord[0].hold },
      servesSome: needs.some(({ leadDays }) => !isTooShort(ofWord[0].hold, leadDays)),
      stems: ofWord.reduce((sum, supply) => supply.stems.reduce((all, ofDay) => all + ofDay, sum), 0),
    }));
  });
}

/**
 * The crops of which a booking can have nothing since its own last cut is so many days before the event, though by the farm's habit they keep until it [M1]
 * [M12]: those that a need of it takes and that are cut near the event, each once, with how long it keeps. None where its last cut is the farm's.
 */
export function cutTooEarly(
  { leadDays }: Pick<Farm, "leadDays">,
  { needs, supplies, fits }: Match,
  bookingId: number,
): Pick<Unheld, "crop" | "hold">[] {
  const found = new Map<number, Pick<Unheld, "crop" | "hold">>();
  for (const need of needs) {
    if (need.booking.id !== bookingId || need.leadDays <= leadDays) continue;
    for (const supplyIndex of fits.of(need).varieties) {
      const { crop, hold, days } = supplies[supplyIndex];
      const isLost = isTooShort(hold, need.leadDays) && !isTooShort(hold, leadDays);
      if (isLost && days.some((day) => Math.abs(need.eventDay - day) <= NEAR_DAYS)) found.set(crop.id, { crop, hold });
    }
  }
  return [...found.values()];
}
