"use client";

import type { ReactNode } from "react";
import type { PlannedSpray } from "#lib/domain/list-age";
import { useClosedBed } from "./field-list.client";

type Props = {
  readonly bedId: number;
  /** The bed or the row, for a screen reader. */
  readonly name: string;
  readonly spray: PlannedSpray;
  /** The day of the list. */
  readonly cutOn: string;
  readonly children: ReactNode;
};

/** What is to be done in a bed, or in its place why nobody enters the bed. */
export function UnlessClosed({ bedId, name, spray, cutOn, children }: Props) {
  const closed = useClosedBed(bedId, spray, cutOn);
  if (closed === null) return children;
  return (
    <>
      <p className="short-word">{closed.why}</p>
      {closed.open && (
        <button type="button" className="quiet" onClick={closed.open}>
          It was not sprayed<span className="visually-hidden">: {name}</span>
        </button>
      )}
    </>
  );
}
