"use client";

import { FAILED } from "./failed-words";

type Props = { error: Error & { digest?: string }; reset: () => void };

/** A page that could not be made, and the ways on. */
export const PageFailed = ({ error, reset }: Props) => (
  <>
    <h1>{FAILED.title}</h1>
    <div className="notice bad">
      <p>{FAILED.what}</p>
      {error.digest && <p className="small">Mark of the failure: {error.digest}</p>}
    </div>
    <p className="actions">
      <button type="button" className="main" onClick={reset}>
        Try again
      </button>
      {FAILED.ways.map(({ href, name }) => (
        <a key={href} className="button" href={href}>
          {name}
        </a>
      ))}
    </p>
  </>
);
