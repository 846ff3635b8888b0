import { inShort, yearOf } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import { allOf } from "#lib/domain/listed";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Colour, Role } from "#lib/domain/words";
import { coloursBy } from "#lib/plan/road/booking-colours";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { asMetBy, type DraftPlan, matchedWith } from "#lib/plan/road/draft";
import { losers } from "#lib/plan/road/losers";
import { withOwnPromises } from "#lib/plan/road/promised-draft";
import type { HeldStems } from "#lib/plan/road/stem-holders";
import { takenToday } from "#lib/plan/road/taken-on";
import { cutTooEarly } from "#lib/plan/road/unheld";
import type { ColourStems } from "#lib/plan/road/week-colours";
import { windowHolders } from "#lib/plan/road/window-holders";
import { needInWords, reasonInWords } from "#lib/plan/words/gap-words";
import { inWholes } from "#lib/plan/words/numbers";
import { lossInWords } from "#lib/plan/words/promise-words";
import { cutTooEarlyInWords } from "#lib/plan/words/unheld-words";
import { today } from "../../clock";
import { loadPlan } from "../../load";

/** One line of the coverage that the form shows while typing. */
type CoverageLine = {
  role: Role;
  colours: readonly Colour[];
  words: string;
  stems: number;
  shortStems: number;
  /** What it gets, by colour. */
  covered: readonly ColourStems[];
  reasons: string[];
  /** Who has stems that it could take, most first. */
  holders: Holder[];
};

/** A booking by name, and the stems of it that are meant, in words. */
type Named = { id: number; client: string; day: string; stems: number; words: string };
type Holder = Named & { isPromised: boolean };

/** How far a booking that is not saved yet would be covered, all else as it stands; `losers` are the bookings that it would take stems from. */
export type DraftCoverage = {
  lines: CoverageLine[];
  stems: number;
  shortStems: number;
  losers: Named[];
  /** What its own last cut costs it, in words; null where it costs nothing. */
  cutTooEarly: string | null;
};

/** @param bookingId  the booking that the draft would replace; null for a new one */
export function draftCoverage(draft: BookingDraft, bookingId: number | null): DraftCoverage {
  const before = loadPlan(yearOf(draft.eventOn));
  const taken = takenToday(before.snapshot, draft, bookingId, today());
  const held = withOwnPromises(before.snapshot, taken, bookingId);
  const stands = asMetBy(before, held, bookingId);
  const after = matchedWith(stands, held, bookingId);
  const names = new Map(before.snapshot.crops.map((crop) => [crop.id, crop.name.toLowerCase()]));
  const own = coverageByBooking(after.match, after.gaps).get(after.draftId);
  const cropName = (id: number) => names.get(id) ?? "crop";
  const colours = coloursBy(after.match, (need) => (need.booking.id === after.draftId ? need : null));
  return {
    lines: (own?.needs ?? []).map(({ need, shortStems, gap }) => ({
      role: need.role,
      colours: need.colours,
      words: needInWords(need, cropName),
      stems: need.stems,
      shortStems,
      covered: colours.get(need) ?? [],
      reasons: gap?.reasons.map(({ reason, stems }) => reasonInWords(reason, stems, need)) ?? [],
      holders: gap ? holdersOf(after, gap.needIndex) : [],
    })),
    stems: own?.needStems ?? 0,
    shortStems: own?.shortStems ?? 0,
    cutTooEarly: tooEarlyWords(before.snapshot.farm, draft, after),
    // An event that is over loses nothing any more, however the days behind it are lived through again.
    losers: losers(stands.match, after.match)
      .filter(({ booking: { eventOn } }) => eventOn >= today())
      .map((loser) => ({ ...named(loser.booking, loser.stems), words: lossInWords(loser, cropName) })),
  };
}

function tooEarlyWords(farm: Farm, draft: BookingDraft, { match, draftId }: DraftPlan): string | null {
  const crops = cutTooEarly(farm, match, draftId).map(({ crop }) => crop);
  return crops.length === 0 ? null : cutTooEarlyInWords(crops, eventDaysOf(farm, draft).leadDays);
}

/** Bookings named beside a line, and lots of stems named of each. */
const HOLDERS_NAMED = 4;
const LOTS_NAMED = 3;

function holdersOf({ match }: DraftPlan, needIndex: number): Holder[] {
  return windowHolders(match, needIndex)
    .slice(0, HOLDERS_NAMED)
    .map(({ booking, stems, held }) => ({
      ...named(booking, stems),
      words: allOf(held.slice(0, LOTS_NAMED).map((lot) => lotInWords(match, lot))),
      isPromised: match.needs.some((need) => need.booking === booking && need.promisedStems > 0),
    }));
}

/** "12 Dahlia Maple Row" */
const lotInWords = ({ supplies }: DraftPlan["match"], { supplyIndex, stems }: HeldStems): string =>
  `${inWholes(stems)} ${supplies[supplyIndex].crop.name} ${supplies[supplyIndex].variety.name}`;

const named = ({ id, client, eventOn }: Booking, stems: number) => ({ id, client, day: inShort(eventOn), stems });
