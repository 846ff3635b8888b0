"use client";

import { createContext, type ReactNode, useContext } from "react";
import { type Day, parseDay } from "#lib/domain/day";
import {
  clockInWords,
  closedByAnswer,
  farmDayNow,
  isAnswered,
  isBeforeFirstPicking,
  isClosed,
  type PlannedSpray,
} from "#lib/domain/list-age";
import { FarmRevision } from "../ui/farm-revision.client";
import { FieldStart } from "./field-start.client";
import type { ListedBed } from "./listed-beds";
import { onTheWall } from "./phone-clock.client";
import { tellSprayed, useSprayAnswer } from "./spray-answer.client";
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
  /** The days on which it is cut by, where these are not the day it was opened on: on others nobody need be asked what was sprayed. */
  readonly cutDays?: readonly string[];
  readonly children: ReactNode;
};

/**
 * A day's list: says how old it is, and does not go on before somebody has said what was sprayed since, where it is older than today's first picking.
 * As long as the farm is heard of and has not changed the list is as good as new.
 */
export function FieldList({ madeAt, farmDay, beds, cutDays, children }: Props) {
  const revision = useContext(FarmRevision);
  const contact = useContact();
  const now = useNow();
  const asOf = contact.revision === revision && contact.at !== null && contact.at > madeAt ? contact.at : madeAt;
  const answer = useSprayAnswer();
  const wall = onTheWall(asOf);
  if (now === null) return children;
  const day = farmDayNow(farmDay, onTheWall(madeAt), now);
  const isCutNow = beds.length > 0 && (cutDays === undefined || cutDays.includes(day));
  const isAsking = isCutNow && isBeforeFirstPicking(wall, now) && !isAnswered(answer, asOf, now);
  const tell = (bedIds: readonly number[]) => tellSprayed({ asOf, on: now.slice(0, 10), bedIds });
  return (
    <ListContext value={{ day, sprayedBedIds: closedByAnswer(answer, now) }}>
      <p className="note list-age">
        As the farm stood at {clockInWords(wall, now)}. <FieldStart />
      </p>
      {isAsking ? <SprayQuestion made={clockInWords(wall, now)} beds={beds} onAnswer={tell} /> : children}
    </ListContext>
  );
}

/**
 * Why a bed may not be entered to cut by a list of the day `cutOn`, now or, where that is still to come, then; in words, and what opens it again where only
 * this phone has closed it. Null when it may.
 */
export function useClosedBed(
  bedId: number,
  spray: PlannedSpray,
  cutOn: string,
): { readonly why: string; readonly open: (() => void) | null } | null {
  const { day, sprayedBedIds } = useContext(ListContext);
  const answer = useSprayAnswer();
  if (day === null) return null;
  const entered = cutOn > day ? parseDay(cutOn) : day;
  if (isClosed(spray, entered)) return { why: `Sprayed: no entry until ${spray.noEntryUntil}.`, open: null };
  if (answer === null || entered > day || !sprayedBedIds.includes(bedId)) return null;
  return {
    why: "Closed on this phone: sprayed since the list was made. Its label says for how long; tell the owner, who writes it down.",
    open: () => tellSprayed({ ...answer, bedIds: answer.bedIds.filter((id) => id !== bedId) }),
  };
}
