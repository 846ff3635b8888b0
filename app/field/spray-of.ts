import type { PlannedSpray } from "#lib/domain/list-age";

/** The spray that is written down for a bed, so that it closes on the day though nobody hears of the farm. */
export const sprayOf = ({ noEntryFrom, noEntryUntil }: PlannedSpray): PlannedSpray => ({ noEntryFrom, noEntryUntil });
