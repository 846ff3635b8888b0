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
    const parts: { need: number; stems: number; isPromised: boolean }[] = [];
    needs.forEach(({ stems, promisedStems }, need) => {
      if (promisedStems > 0) parts.push({ need, stems: promisedStems, isPromised: true });
      if (promisedStems < stems || stems === 0) parts.push({ need, stems: stems - promisedStems, isPromised: false });
      this.firstPart[need + 1] = parts.length;
    });
    this.needOfPart = Int32Array.from(parts, ({ need }) => need);
    this.stems = Int32Array.from(parts, ({ stems }) => stems);
    this.isPromised = parts.map(({ isPromised }) => isPromised);
  }

  get needCount(): number {
    return this.firstPart.length - 1;
  }

  get count(): number {
    return this.needOfPart.length;
  }
}
