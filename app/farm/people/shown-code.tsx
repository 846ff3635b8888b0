import type { ReactNode } from "react";
import type { CodeState } from "./code-state";

/** A code that was made just now, as a drawing and as a link. Dark on light in any theme: many readers take no other. */
export const ShownCode = ({ code, label, children }: { code: CodeState; label: string; children: ReactNode }) =>
  code && (
    <div role="status" className="join-code">
      <svg
        viewBox={`0 0 ${code.drawing.size} ${code.drawing.size}`}
        role="img"
        aria-label={label}
        shapeRendering="crispEdges"
      >
        <rect width={code.drawing.size} height={code.drawing.size} />
        <path d={code.drawing.dark} />
      </svg>
      <p className="note">
        <code>{code.link}</code>
      </p>
      <p className="note">{children}</p>
    </div>
  );
