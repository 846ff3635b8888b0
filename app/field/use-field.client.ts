"use client";

import { useContext, useSyncExternalStore } from "react";
import { isShownBy, isTakenBack, kindOf, type SentTally, type Unsent } from "#lib/domain/unsent";
import { FarmRevision } from "../ui/farm-revision.client";
import { type Contact, contactNow, noContact, onContact } from "./contact.client";
import { allUnsent, noneUnsent, onUnsent } from "./unsent-store.client";

/** All that is on this phone and that the page does not show itself. */
export function useUnsent(): readonly Unsent[] {
  const revision = useContext(FarmRevision) ?? 0;
  return useSyncExternalStore(onUnsent, allUnsent, noneUnsent).filter((unsent) => !isShownBy(unsent, revision));
}

type Place = Pick<SentTally, "cutOn" | "bedId" | "varietyId">;

/** What was said of a row on this phone, as long as the page does not show it, but what the farm refused. */
function useUnsentAt(place: Place): readonly Unsent[] {
  return useUnsent().filter(
    ({ tally, state }) =>
      state !== "refused" &&
      tally.cutOn === place.cutOn &&
      tally.bedId === place.bedId &&
      tally.varietyId === place.varietyId,
  );
}

/** What was counted of a row here and not taken back again. */
export function useCountsOf(place: Place): readonly Unsent[] {
  const unsent = useUnsentAt(place);
  return unsent.filter((one) => kindOf(one.tally) === "counted" && !isTakenBack(one, unsent));
}

/** What was said here of what the list shows as recorded of a row: that it is really so many, or is taken back. */
export const useChangesOf = (place: Place): readonly Unsent[] =>
  useUnsentAt(place).filter(({ tally }) => kindOf(tally) !== "counted" && !tally.of);

export const useContact = (): Contact => useSyncExternalStore(onContact, contactNow, noContact);
