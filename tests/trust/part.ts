/** What a part of the trust run found: how often each thing was tried, and how often it went wrong. */
export type Figures = {
  readonly title: string;
  readonly lines: readonly string[];
  /** Each in words with its seed; none when all went well. */
  readonly faults: readonly string[];
};

/** A part of the trust run. `scale` is 1 in the full run and smaller in the short one. */
export type Part = (scale: number) => Promise<Figures>;
