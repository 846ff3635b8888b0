import type { Need } from "./needs";

/**
 * How needs stand as nodes of the match: one each, or two where a part is promised and the rest is not, the promised part first. Both parts
 * have the need's arcs, at the same costs; they differ in what a stem short costs. Parts count from 0 in the order of the needs.
 */
export class NeedParts {
  /** The first part of each need, and one past the last. */
  readonly firstPart: Int32Array;
  /** The need of each part. */
  readonly needOfPart: Int32Array;
  readonly stems: Int32Array;
  readonly isPromised: readonly boolean[];
  /** What a promised stem short costs beside its price, in cents [M9]. */
  readonly lossCents: number;

  constructor(needs: readonly Need[], lossCents: number) {
    this.lossCents = lossCents;
    this.firstPart = new Int32Array(needs.length + 1);
    const needOfPart = new Int32Array(2 * needs.length);
    const stemsOf = new Int32Array(2 * needs.length);
    const isPromised: boolean[] = [];
    const put = (need: number, stems: number, promised: boolean) => {
      needOfPart[isPromised.length] = need;
      stemsOf[isPromised.length] = stems;
      isPromised.push(promised);
    };
    for (let need = 0; need < needs.length; need++) {
      const { stems, promisedStems } = needs[need];
      if (promisedStems > 0) put(need, promisedStems, true);
      if (promisedStems < stems || stems === 0) put(need, stems - promisedStems, false);
      this.firstPart[need + 1] = isPromised.length;
    }
    this.needOfPart = needOfPart.subarray(0, isPromised.length);
    this.stems = stemsOf.subarray(0, isPromised.length);
    this.isPromised = isPromised;
  }

  get needCount(): number {
    return this.firstPart.length - 1;
  }

  get count(): number {
    return this.needOfPart.length;
  }
}
