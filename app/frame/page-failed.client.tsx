"use client";

type Props = { error: Error & { digest?: string }; reset: () => void };

/**
 * A page that could not be made. Showing a page writes nothing; whether a save just before it landed is not known here, and the history says it.
 */
export const PageFailed = ({ error, reset }: Props) => (
  <>
    <h1>This page could not be made</h1>
    <div className="notice bad">
      <p>
        Something went wrong while the page was made, which changes none of your records. If you had just saved
        something, look into the history whether it is there before you save it again. If it stays like this, the window
        in which the tool was started says more.
      </p>
      {error.digest && <p className="small">Mark of the failure: {error.digest}</p>}
    </div>
    <p className="actions">
      <button type="button" className="main" onClick={reset}>
        Try again
      </button>
      <a className="button" href="/farm/history">
        History of changes
      </a>
      <a className="button" href="/farm/copies">
        Copies of the farm
      </a>
    </p>
  </>
);
