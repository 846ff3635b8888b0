import type { BloomCurve } from "#lib/domain/records/curve";
import type { Units } from "#lib/domain/words";
import { clockInWords } from "#lib/plan/words/clock-words";
import { OriginMark } from "../../ui/origin-mark";

/** What a bloom curve rests on: where its timing, its yield and its warmth come from, and its note. */
export function CurveGrounds({ curve, units }: { curve: BloomCurve; units: Units }) {
  const clock = clockInWords(curve, units);
  return (
    <>
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
      {curve.note && <p className="small soft">{curve.note}</p>}
    </>
  );
}
