import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { bed, booking, crop, curve, day, farm, focal, monthDay, planting, snapshot, variety } from "../../small-farm";

/**
 * Two dahlia beds and a bed of yarrow; the dahlias bloom from 24 June when kept and 85 days after planting when dug. Bed 1 holds
 * dahlias and yarrow together. Two bookings.
 */
export const dahliaFarm = (): Snapshot =>
  snapshot({
    farm: farm(),
    crops: [
      crop({ id: 1, name: "Dahlia", tender: true, overwinters: true }),
      crop({ id: 2, name: "Yarrow", roles: ["filler"] }),
    ],
    varieties: [variety({ id: 1, name: "Maple Row" }), variety({ id: 2, cropId: 2, name: "Hill" })],
    curves: [
      curve({
        id: 1,
        treatment: "spring-planted",
        anchor: { kind: "days-after-planting", days: 85 },
        stemsPerPlantByWeek: [1, 2],
      }),
      curve({
        id: 2,
        treatment: "kept-in-ground",
        anchor: { kind: "day-of-year", firstCut: monthDay("06-24") },
        stemsPerPlantByWeek: [1, 2],
      }),
      curve({ id: 3, cropId: 2 }),
    ],
    beds: [bed({ id: 1, name: "East" }), bed({ id: 2, name: "West" })],
    plantings: [
      planting({ id: 1, bedId: 1, treatment: "spring-planted" }),
      planting({ id: 2, bedId: 1, varietyId: 2 }),
      planting({ id: 3, bedId: 2, treatment: "spring-planted" }),
      planting({ id: 4, bedId: 2, treatment: "spring-planted", seasonYear: 2028, plantedOn: day("2028-05-20") }),
    ],
    bookings: [
      booking({ id: 1, client: "A. Invented", eventOn: day("2027-08-21"), stemLines: focal(30) }),
      booking({ id: 2, client: "B. Invented", eventOn: day("2027-09-18"), status: "enquiry", stemLines: focal(10) }),
    ],
  });

const { id: _bookingId, ...bookingDraft } = booking({ id: 9, client: "C. Invented", stemLines: focal(5) });
const { id: _plantingId, ...newPlanting } = planting({ id: 9, bedId: 2 });

/** A booking as it stands before it has an id. */
export const newBooking = bookingDraft;

/** One of each kind, all of which fit the farm. */
export const FITTING: Change[] = [
  { kind: "bed-kept", bedId: 1 },
  { kind: "bed-dug", bedId: 2 },
  { kind: "frost-moved", firstFrost: monthDay("09-20") },
  { kind: "season-shifted", days: 10, cropId: null },
  { kind: "yield-scaled", factor: 0.5, cropId: 1 },
  { kind: "booking-added", booking: newBooking },
  { kind: "booking-moved", bookingId: 1, eventOn: day("2027-08-28") },
  { kind: "booking-dropped", bookingId: 2 },
  { kind: "status-set", bookingId: 1, status: "held" },
  { kind: "planting-added", planting: newPlanting },
  { kind: "planting-moved", plantingId: 3, bedId: 1, plantedOn: day("2027-05-30") },
  { kind: "planting-removed", plantingId: 2 },
  { kind: "at-hand-set", resource: "leaves", atHand: 12 },
];

/** One of each kind that names something, naming what the farm does not have. */
export const GONE: Change[] = [
  { kind: "bed-kept", bedId: 99 },
  { kind: "bed-dug", bedId: 99 },
  { kind: "season-shifted", days: 3, cropId: 99 },
  { kind: "yield-scaled", factor: 2, cropId: 99 },
  { kind: "booking-added", booking: { ...newBooking, pieces: [{ recipeId: 99, pieceCount: 1, colours: [] }] } },
  { kind: "booking-added", booking: { ...newBooking, unacceptableCropIds: [99] } },
  { kind: "booking-moved", bookingId: 99, eventOn: day("2027-08-28") },
  { kind: "booking-dropped", bookingId: 99 },
  { kind: "status-set", bookingId: 99, status: "held" },
  { kind: "planting-added", planting: { ...newPlanting, bedId: 99 } },
  { kind: "planting-added", planting: { ...newPlanting, varietyId: 99 } },
  { kind: "planting-moved", plantingId: 99, bedId: 1, plantedOn: null },
  { kind: "planting-moved", plantingId: 1, bedId: 99, plantedOn: null },
  { kind: "planting-removed", plantingId: 99 },
];
