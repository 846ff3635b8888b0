"use client";

/** Opens the browser's print window. */
export const PrintButton = () => (
  <button type="button" className="main" onClick={() => window.print()}>
    Print
  </button>
);
