import { yearOf } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { Colour, Role } from "#lib/domain/words";
import { coloursBy } from "#lib/plan/road/booking-colours";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { withDraft } from "#lib/plan/road/draft";
import type { Match } from "#lib/plan/road/match";
import type { ColourStems } from "#lib/plan/road/week-colours";
import { needInWords, reasonInWords } from "#lib/plan/words/gap-words";
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
};

/** How far a booking that is not saved yet would be covered, all else as it stands; `shortElsewhere` are stems it takes from others. */
export type DraftCoverage = { lines: CoverageLine[]; stems: number; shortStems: number; shortElsewhereStems: number };

/** @param bookingId  the booking that the draft would replace; null for a new one */
export function draftCoverage(draft: BookingDraft, bookingId: number | null): DraftCoverage {
  const before = loadPlan(yearOf(draft.eventOn));
  const after = withDraft(before, draft, bookingId);
  const names = new Map(before.snapshot.crops.map((crop) => [crop.id, crop.name.toLowerCase()]));
  const own = coverageByBooking(after.match, after.gaps).get(after.draftId);
  const shortElsewhere = ({ needs, shortStems }: Match) =>
    needs.reduce((sum, { booking }, index) => (booking.id === after.draftId ? sum : sum + shortStems[index]), 0);
  const colours = coloursBy(after.match, (need) => (need.booking.id === after.draftId ? need : null));
  return {
    lines: (own?.needs ?? []).map(({ need, shortStems, gap }) => ({
      role: need.role,
      colours: need.colours,
      words: needInWords(need, (id) => names.get(id) ?? "crop"),
      stems: need.stems,
      shortStems,
      covered: colours.get(need) ?? [],
      reasons: gap?.reasons.map(({ reason, stems }) => reasonInWords(reason, stems, need)) ?? [],
    })),
    stems: own?.needStems ?? 0,
    shortStems: own?.shortStems ?? 0,
    shortElsewhereStems: Math.max(0, shortElsewhere(after.match) - shortElsewhere(before.match)),
  };
}
