import fc from "fast-check";

/** Any habit in order: the last cut no later than design, and design no later than delivery. Most days before an event: `most`. */
export const anyHabit = (most: number) =>
  fc
    .tuple(fc.nat(most), fc.nat(most), fc.nat(most), fc.nat(2))
    .map(([a, b, c, wornLaterDays]) => ({ ...inOrder(a, b, c), wornLaterDays }));

/** Any days that a booking may say of itself, in order; each of them as often not said. */
export const anyOwnDays = (most: number) =>
  fc
    .tuple(fc.nat(most), fc.nat(most), fc.nat(most), fc.boolean(), fc.boolean(), fc.boolean())
    .map(([a, b, c, ...said]) => {
      const days = inOrder(a, b, c);
      return {
        leadDays: said[0] ? days.leadDays : null,
        designDays: said[1] ? days.designDays : null,
        deliverDays: said[2] ? days.deliverDays : null,
      };
    });

const inOrder = (...days: readonly [number, number, number]) => {
  const [deliverDays, designDays, leadDays] = [...days].sort((a, b) => a - b);
  return { leadDays, designDays, deliverDays };
};
