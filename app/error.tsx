"use client";

/** Something failed while a page was made. Nothing was written; the server's own window says what it was. */
export default function ErrorPage({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <>
      <h1>This page could not be made</h1>
      <div className="notice bad">
        <p>
          Nothing was written, and your records are as they were. Try again; if it stays like this, the window in which
          the tool was started says more.
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
      </p>
    </>
  );
}
