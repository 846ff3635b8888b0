import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";

/**
 * How long a crop's cut stems keep as this farm keeps them, in days from cut to event, fractions allowed: `days` as good as fresh, and up to
 * `stretchDays` at a stretch, which is never less [M10].
 */
export type Hold = { readonly days: number; readonly stretchDays: number };

/** How a farm keeps its cut stems. */
type Store = Pick<Farm, "storeC" | "coolRoomC" | "storesDry">;

/**
 * A cut flower breathes three times as fast for each 10 °C: measured between 0 and 10 °C on rose and gypsophila (Çelikel and Reid, "Temperature and Postharvest
 * Performance of Rose … and Gypsophila … Flowers", symposium paper). That its days shorten alike, and beyond 10 °C too, is our assumption.
 */
const FASTER_IN_TEN_DEGREES = 3;

/**
 * The hold of a crop in a farm's store [M10]. What keeps longer dry keeps so where the farm stores dry. A farm that has not said how warm its store is
 * takes the crop's days as they stand; what cold hurts stands in the cool room then, and is the warmer for it.
 */
export function holdOf({ holdDays, stretchDays, dryHoldDays, holdUpToC, notColderC }: Crop, farm: Store): Hold {
  const days = farm.storesDry ? Math.max(holdDays.count, dryHoldDays.count) : holdDays.count;
  const longest = Math.max(days, stretchDays.count);
  if (farm.storeC === null) return { days, stretchDays: longest };
  const standsAtC = farm.storeC < notColderC.count ? Math.max(farm.coolRoomC, notColderC.count) : farm.storeC;
  const tooWarmC = Math.max(0, standsAtC - holdUpToC.count);
  const share = FASTER_IN_TEN_DEGREES ** (-tooWarmC / 10);
  return { days: days * share, stretchDays: longest * share };
}

/** Whether any whole day of the hold is a stretch. */
export const hasStretch = ({ days, stretchDays }: Hold): boolean => Math.floor(stretchDays) > Math.floor(days);

/** Whether no stem that is ready for an event still keeps: of such a crop nothing can serve any event [M1]. */
export const isTooShort = ({ stretchDays }: Hold, leadDays: number): boolean => Math.floor(stretchDays) < leadDays;

/**
 * The hold window before an event: the days on which a stem for it may be cut, both included [M1]. Day numbers. Where the hold is shorter than the
 * lead days it is empty: the earliest day is the one after the latest.
 */
export const holdWindow = (eventDay: number, leadDays: number, hold: Hold) => ({
  earliest: eventDay - (isTooShort(hold, leadDays) ? leadDays - 1 : Math.floor(hold.stretchDays)),
  latest: eventDay - leadDays,
});

/** The last event that a stem cut on a day may serve: the hold window seen from the cut. Day numbers. */
export const lastEventDay = (cutDay: number, { stretchDays }: Hold): number => cutDay + Math.floor(stretchDays);

/**
 * The days on which stems of a supply may have been cut for an event: the hold window, and for what was cut for a booking itself also the days after it, up
 * to the event [T2]. Of what is nobody's an event before `fromDay` gets no more: it has passed [T1]. Day numbers, both included.
 */
export const servingWindow = (
  eventDay: number,
  leadDays: number,
  { hold, bookingId, fromDay }: { readonly hold: Hold; readonly bookingId?: number; readonly fromDay?: number },
) => {
  if (bookingId !== undefined) return { earliest: eventDay - Math.floor(hold.stretchDays), latest: eventDay };
  const { earliest, latest } = holdWindow(eventDay, leadDays, hold);
  return fromDay !== undefined && eventDay < fromDay ? { earliest, latest: earliest - 1 } : { earliest, latest };
};
