import { sameDayIn, yearOf } from "#lib/domain/day";
import type { BookingRecord, FarmRecords, PlantingRecord } from "#lib/domain/farm-records";
import { sameWeekday } from "./demo-season";
import { TRIAL_BED } from "./plants-counted";

/** Who was married in the seasons before, invented like the rest: as many as either season can have. The latest season takes them from the start, the one before it from the end. */
const CLIENTS =
  "Applegarth Barrowmead Beckfold Bellmeadow Berrycroft Blackthorn Bracken Brindle Brookfold Burnside Catkin Cloverley Coldharbour Corncroft Crabtree Cresswell Dewberry Dovecote Elderfold Fallowfield Featherbed Fieldfare Foxholt Goosegate Greenlane Hazelmere Hayrick Hedgeley Holmfirst Honeybank Ivygate Juniper Kestrel Kingcup Ladyfold Leaside Linden Lowbeck Maypole Meadowsweet Millfold Mosslea Nightingale Oakapple Orchardleigh Otterbank Partridge Primrose Quincefold Redwing Rookery".split(
    " ",
  );

/** The farm's plantings and bookings of the season so many years before the one that `records` are of, by name, as they were then. */
export function pastRecords(records: FarmRecords, season: number, yearsBefore: number): FarmRecords {
  const year = season - yearsBefore;
  return {
    plantings: (records.plantings ?? []).flatMap((planting) => plantingOf(planting, season, year)),
    bookings: bookingsOf(records.bookings ?? [], yearsBefore),
  };
}

/** What is planted anew each year was planted then too, but for the bed on trial; what has stood for longer was the same plants, and was not there before it was planted. */
function plantingOf(planting: PlantingRecord, season: number, year: number): PlantingRecord[] {
  if (planting.bed === TRIAL_BED[season - year])
    return [
      {
        ...planting,
        seasonYear: year,
        treatment: "kept-in-ground",
        plantedOn: sameDayIn(planting.plantedOn, year - 1),
      },
    ];
  const plantedIn = yearOf(planting.plantedOn);
  const isKept = planting.treatment === "kept-in-ground";
  if (plantedIn < season - 1) return plantedIn < year ? [{ ...planting, seasonYear: year }] : [];
  // A bed that is left in the ground for the first time was planted in the springs before.
  const inYear = isKept ? year : plantedIn - (season - year);
  return [
    {
      ...planting,
      seasonYear: year,
      treatment: isKept ? "spring-planted" : planting.treatment,
      winterSurvivalShare: isKept ? null : planting.winterSurvivalShare,
      plantedOn: sameDayIn(planting.plantedOn, inYear),
    },
  ];
}

/** Of the confirmed bookings of today three in four had one like them, somewhat smaller, on the same weekday of the same week. */
function bookingsOf(bookings: readonly BookingRecord[], yearsBefore: number): BookingRecord[] {
  const names = yearsBefore === 1 ? CLIENTS : CLIENTS.toReversed();
  return bookings
    .filter(({ status }, index) => status === "confirmed" && index % 4 !== yearsBefore)
    .map((booking, index) => ({
      ...booking,
      client: `${names[index]} ${booking.client.split(" ").at(-1)}`,
      eventOn: sameWeekday(booking.eventOn, -yearsBefore),
      pieces: booking.pieces.map((piece) => ({ ...piece, pieceCount: Math.ceil(piece.pieceCount * 0.8) })),
      promises: [],
      note: "Invented.",
    }));
}
