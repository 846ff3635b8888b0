import type { ReactNode } from "react";
import "./work-bar.css";

type Props = {
  /** What is being done, and how far. */
  children: ReactNode;
  /** 0 to 1; null when nobody can say. */
  share: number | null;
  isStopping: boolean;
  stop: () => void;
  stopWords: string;
};

/** Work under way: a bar, the words, and the button that ends it with the best so far. */
export const WorkBar = ({ children, share, isStopping, stop, stopWords }: Props) => (
  <div className="notice work-bar">
    <p role="status">{children}</p>
    <progress max={1} value={share ?? undefined} aria-label="How far it is" />
    <button type="button" onClick={stop} disabled={isStopping}>
      {isStopping ? "Stopping…" : stopWords}
    </button>
  </div>
);
