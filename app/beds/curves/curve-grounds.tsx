import type { BloomCurve } from "#lib/domain/records/curve";
import { markInWords } from "#lib/domain/sourced";
import type { Units } from "#lib/domain/words";
import { clockInWords } from "#lib/plan/words/clock-words";
import { noteParts } from "#lib/plan/words/note-words";
import { OriginMark, SourceLink } from "../../ui/origin-mark";

/** What a bloom curve rests on, folded under its marks: where its timing, its yield and its warmth come from, and its note. */
export function CurveGrounds({ curve, units }: { curve: BloomCurve; units: Units }) {
  const clock = clockInWords(curve, units);
  return (
    <details className="curve-grounds">
      <summary>
        <span>
          Where its numbers come from{" "}
          <small className="soft">
            timing {markInWords(curve.timingOrigin.mark, true)}, yield {markInWords(curve.yieldOrigin.mark, true)}
          </small>
        </span>
      </summary>
      <p>
        Timing <OriginMark origin={curve.timingOrigin} />
        <br />
        Yield <OriginMark origin={curve.yieldOrigin} />
      </p>
      {clock !== null && (
        <p>
          {clock}
          <br />
          Base temperature <OriginMark origin={curve.heatOrigin} />
        </p>
      )}
      {curve.note && (
        <p className="small soft">
          {noteParts(curve.note, units).map((part) =>
            typeof part === "string" ? part : <SourceLink key={part.title} source={part} />,
          )}
        </p>
      )}
    </details>
  );
}
