"use client";

import { createContext, type ReactNode, useContext } from "react";
import type { Day } from "#lib/domain/day";
import { clockInWords, farmDayNow, isBeforeFirstPicking, isClosed, type PlannedSpray } from "#lib/domain/list-age";
import { FarmRevision } from "../ui/farm-revision.client";
import { FieldStart } from "./field-start.client";
import type { ListedBed } from "./listed-beds";
import { onTheWall } from "./phone-clock.client";
import { useSprayAnswer } from "./spray-answer.client";
import { SprayQuestion } from "./spray-question.client";
import { useContact } from "./use-field.client";
import { useNow } from "./wall-clock.client";

/** What a list that is open knows of the day: the farm's day by now, and beds that were sprayed since it was made, as somebody has said on this phone. */
type OpenList = { readonly day: Day | null; readonly sprayedBedIds: readonly number[] };

const ListContext = createContext<OpenList>({ day: null, sprayedBedIds: [] });

type Props = {
  /** The moment in UTC at which the list was made. */
  readonly madeAt: string;
  /** The farm's day then. */
  readonly farmDay: Day;
  readonly beds: readonly ListedBed[];
  readonly children: ReactNode;
};

/**
 * A day's list: says how old it is, and does not go on before somebody has said what was sprayed since, where it is older than today's first picking.
 * As long as the farm is heard of and has not changed the list is as good as new.
 */
export function FieldList({ madeAt, farmDay, beds, children }: Props) {
  const revision = useContext(FarmRevision);
  const contact = useContact();
  const now = useNow();
  const asOf = contact.revision === revision && contact.at !== null && contact.at > madeAt ? contact.at : madeAt;
  const [answer, tellAnswer] = useSprayAnswer(asOf);
  const wall = onTheWall(asOf);
  if (now === null) return children;
  const isAsking = beds.length > 0 && isBeforeFirstPicking(wall, now) && answer === null;
  return (
    <ListContext value={{ day: farmDayNow(farmDay, onTheWall(madeAt), now), sprayedBedIds: answer ?? [] }}>
      <p className="note list-age">
        As the farm stood at {clockInWords(wall, now)}. <FieldStart />
      </p>
      {isAsking ? <SprayQuestion made={clockInWords(wall, now)} beds={beds} onAnswer={tellAnswer} /> : children}
    </ListContext>
  );
}

/** Why a bed of the list may not be entered now, in words; null when it may. */
export function useClosedBed(bedId: number, spray: PlannedSpray): string | null {
  const { day, sprayedBedIds } = useContext(ListContext);
  if (day !== null && isClosed(spray, day)) return `Sprayed: no entry until ${spray.noEntryUntil}.`;
  return sprayedBedIds.includes(bedId)
    ? "Closed on this phone: sprayed since the list was made. Its label says for how long; tell the owner, who writes it down."
    : null;
}
