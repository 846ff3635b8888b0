/** What the marks of the table of beds mean, under it. */
export const TableKey = () => (
  <>
    <ul className="table-key small">
      <li>
        <svg viewBox="0 0 28 14" width="28" height="14" aria-hidden="true">
          <rect width="28" height="14" fill="url(#hatch)" />
        </svg>{" "}
        weeks short of focal stems with every bed dug
      </li>
      <li>
        <svg viewBox="0 0 28 14" width="28" height="14" className="bed-strip is-kept" aria-hidden="true">
          <path className="bar f-pink" d="M3 4h9v9h-9zM14 1h9v12h-9z" />
        </svg>{" "}
        kept
      </li>
      <li>
        <svg viewBox="0 0 28 14" width="28" height="14" className="bed-strip" aria-hidden="true">
          <path className="would-add" d="M3 5h9v8h-9zM14 8h9v5h-9z" />
        </svg>{" "}
        what keeping would add
      </li>
      <li>
        <svg viewBox="0 0 14 13" width="14" height="13" className="survival-pays" aria-hidden="true">
          <path className="reckoned" d="M3 0h8l-4 6zM7 4V13" />
        </svg>{" "}
        the survival reckoned with
      </li>
    </ul>
    <p className="small soft">
      A bed fills short focal stems as it is ticked, and saves what the season would cost more if that bed alone went
      the other way; keeping pays from a share of clumps alive in spring on.{" "}
      <strong>No published survival in the ground was found; it is your own number</strong>, for the farm on{" "}
      <a href="/farm">Farm</a>, for a planting on its bed’s page.
    </p>
  </>
);
