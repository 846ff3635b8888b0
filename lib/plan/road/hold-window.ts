/** The crop's hold window before an event: the days on which a stem for it may be cut, both included [M1]. Day numbers. */
export const holdWindow = (eventDay: number, leadDays: number, holdDays: number) => ({
  earliest: Math.ceil(eventDay - Math.max(holdDays, leadDays)),
  latest: eventDay - leadDays,
});
