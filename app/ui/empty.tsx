import type { ReactNode } from "react";

/** What to do first, where there is nothing yet. */
export const Empty = ({ title, children }: { title: string; children: ReactNode }) => (
  <div className="empty">
    <h2>{title}</h2>
    {children}
  </div>
);
