import type { MonthDay } from "./day";
import type { Farm } from "./records/farm-settings";
import { WINTER_FIGURES_EDITION } from "./winter-figures";

/** What a farm knows of frosts and winters before anybody wrote of one. */
const NOTHING_SEEN_YET = { coldNightOn: null, coldNightLowC: null, killingFrosts: [], learnedWinters: [] };

/** Days after which what is not signed lapses, and days before an event on which what is signed is counted. */
const DAYS_OF_BOOKINGS = { enquiryDays: 14, holdDays: 30, finalCountDays: 28 };

/** Cut two days before, made up on the day before, what is worn cut then too, delivered on the day. */
const EVENT_DAYS = { leadDays: 2, wornLaterDays: 1, designDays: 1, deliverDays: 0 };

/** The rates stand with their sources in the record; what is at hand is the farm's to say. */
const HANDS_AND_ROOM = {
  cutStemsPerHour: 150,
  cutHoursPerDay: null,
  benchStemsPerHour: 36,
  benchHoursPerWeek: null,
  bucketPlaces: null,
};

/** What a farm has of everything for the winter, until it says so. */
const NO_LIMITS = {
  leafCubicMetresAtHand: null,
  tarpSquareMetresAtHand: null,
  hoursAtHand: null,
  keepShareAtMost: null,
};

/**
 * The settings a new farm starts from, each to be overruled on the Farm screen. Frost dates, picking and event days: common practice for
 * zone 7. Storage loss: 7.5 %, the middle of the published 5 to 10 % (American Dahlia Society, ADS-STORE). Leaf depth: 8 inches
 * (0.2 m), published for straw in North Carolina (ASKEXT-NC). Work rates, tarp and tuber prices, edges, settling and hauling of leaves, winter
 * survival in the ground: from memory; no published figure for survival or settling was found, so the tool asks for the grower's own. That every dead
 * clump is replanted, that an early crop brings nothing until she says what, and after how many days enquiries and holds lapse: our choice. Final
 * count four weeks before the event: common practice is three to five.
 */
export function newFarm(name: string): Farm {
  const monthDay = (text: string) => text as MonthDay;
  return {
    name,
    isInvented: false,
    zone: "7a",
    units: "us",
    decimalMark: "point",
    dateOrder: "ask",
    ownColours: [],
    pickingWeekdays: [1, 3, 4, 6],
    ...EVENT_DAYS,
    orderDaysAhead: 21,
    ...DAYS_OF_BOOKINGS,
    spareShare: 0.1,
    promiseLossCents: null,
    storeC: null,
    coolRoomC: 13,
    storesDry: true,
    followsSeason: true,
    frostAlarmC: 2,
    ...NOTHING_SEEN_YET,
    ...HANDS_AND_ROOM,
    frost: {
      firstAutumnP10: monthDay("10-04"),
      firstAutumnP50: monthDay("10-18"),
      firstAutumnP90: monthDay("11-02"),
      lastSpringP10: monthDay("05-06"),
      lastSpringP50: monthDay("04-20"),
      lastSpringP90: monthDay("04-06"),
    },
    climate: null,
    statusWeights: { confirmed: 1, held: 0.6, enquiry: 0.3 },
    winter: {
      wageCentsPerHour: 2000,
      digClumpsPerHour: 30,
      divideClumpsPerHour: 14,
      replantTubersPerHour: 90,
      storageCentsPerClump: 40,
      storageLossShare: 0.075,
      divisionsPerClump: 4,
      tuberCents: 600,
      tubersWantedShare: 0.1,
      leafDepthMetres: 0.2,
      leafSettlingShare: 0.2,
      leafEdgeMetres: 0.15,
      leafCentsPerCubicMetre: 0,
      leafHaulHoursPerCubicMetre: 0.5,
      tarpEdgeMetres: 0.4,
      tarpCentsPerSquareMetre: 60,
      coverHoursPerSquareMetre: 0.08,
      winterSurvivalShare: 0.75,
      replantDeadShare: 1,
      freeBedCentsPerSquareMetre: 0,
      ...NO_LIMITS,
      expectedFrom: "a number",
      expectedSaturdayCount: 0,
      expectedWeightShare: 0.6,
      workHoursPerDay: 6,
      figuresEdition: WINTER_FIGURES_EDITION,
    },
  };
}
