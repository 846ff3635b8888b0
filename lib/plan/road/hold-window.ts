/** The crop's hold window before an event: the days on which a stem for it may be cut, both included [M1]. Day numbers. */
export const holdWindow = (eventDay: number, leadDays: number, holdDays: number) => ({
  earliest: Math.ceil(eventDay - Math.max(holdDays, leadDays)),
  latest: eventDay - leadDays,
});

/** The last event that a stem cut on a day may serve: the hold window seen from the cut. Day numbers. */
export const lastEventDay = (cutDay: number, leadDays: number, holdDays: number): number =>
  Math.floor(cutDay + Math.max(holdDays, leadDays));
