"use client";

import { type KeyboardEvent, type ReactNode, type SyntheticEvent, useState } from "react";

/** What the readout says of a week; `figures` by winter. */
export type WeekSaid = {
  readonly words: string;
  readonly bookings: string;
  readonly figures: Readonly<Record<string, string>>;
  readonly reach: string;
};

type Props = {
  readonly weeks: readonly WeekSaid[];
  readonly winters: readonly { readonly key: string; readonly words: string; readonly short: string }[];
  /** Winters that are not known yet, the first to stand before the others: each has its place in the switch. */
  readonly coming: readonly string[];
  readonly shown: string;
  /** The week the readout starts at: the worst. */
  readonly worst: number;
  readonly head: ReactNode;
  readonly children: ReactNode;
};

/** The ribbon's switch between winters and the readout of the week in focus. Arrow keys go from week to week, Enter opens it. */
export function RibbonFocus({ weeks, winters, coming, shown, worst, head, children }: Props) {
  const [winter, setWinter] = useState(shown);
  const [week, setWeek] = useState(worst);
  const look = ({ target }: SyntheticEvent) => {
    const found = target instanceof Element ? target.closest<SVGAElement>("[data-week]") : null;
    if (found) setWeek(Number(found.dataset.week));
  };
  const step = (event: KeyboardEvent<HTMLElement>) => {
    const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const here = event.target instanceof Element ? event.target.closest<SVGAElement>("[data-week]") : null;
    if (by === 0 || !here) return;
    event.preventDefault();
    event.currentTarget.querySelector<SVGAElement>(`[data-week="${Number(here.dataset.week) + by}"]`)?.focus();
  };
  const said = weeks[week];
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the links within are what is focused; this listens for them
    <div className="ribbon-board" data-winter={winter} onFocus={look} onMouseOver={look} onKeyDown={step}>
      <div className="ribbon-head">
        {head}
        {winters.length + coming.length > 1 && (
          <div className="choices" role="radiogroup" aria-label="Which winter">
            {coming.slice(0, 1).map(placeOf)}
            {winters.map(({ key, words, short }) => (
              <label key={key}>
                <input
                  type="radio"
                  name="winter"
                  value={key}
                  checked={key === winter}
                  onChange={() => setWinter(key)}
                />
                {words}
                <small>{short} short</small>
              </label>
            ))}
            {coming.slice(1).map(placeOf)}
          </div>
        )}
      </div>
      {children}
      {said && (
        <p className="readout" aria-live="polite">
          <b>{said.words}</b> {said.bookings && <span>{said.bookings}</span>} <span>{said.figures[winter]}</span>
          {said.reach && <span className="soft">{said.reach}</span>}
        </p>
      )}
    </div>
  );
}

/** A winter that is not known yet, in the switch. */
const placeOf = (words: string) => (
  <label key={words}>
    <input type="radio" name="winter" value="" disabled />
    {words}
    <small>…</small>
  </label>
);
