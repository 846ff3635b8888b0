"use client";

import { useContext, useSyncExternalStore } from "react";
import { isShownBy, type SentTally, type Unsent } from "#lib/domain/unsent";
import { FarmRevision } from "../ui/farm-revision.client";
import { type Contact, contactNow, noContact, onContact } from "./contact.client";
import { allUnsent, noneUnsent, onUnsent } from "./unsent-store.client";

/** All that is on this phone and that the page does not show itself. */
export function useUnsent(): readonly Unsent[] {
  const revision = useContext(FarmRevision) ?? 0;
  return useSyncExternalStore(onUnsent, allUnsent, noneUnsent).filter((unsent) => !isShownBy(unsent, revision));
}

/** What was counted of a row on this phone, as long as the page does not show it, but what the farm refused. */
export const useUnsentOf = (place: Pick<SentTally, "cutOn" | "bedId" | "varietyId">): readonly Unsent[] =>
  useUnsent().filter(
    ({ tally, state }) =>
      state !== "refused" &&
      tally.cutOn === place.cutOn &&
      tally.bedId === place.bedId &&
      tally.varietyId === place.varietyId,
  );

export const useContact = (): Contact => useSyncExternalStore(onContact, contactNow, noContact);
