import { HARDINESS, WINTER_CAUTIONS } from "#lib/plan/words/winter-cautions";
import { WinterCautionList } from "./winter-caution-list";

/** What to know before a first winter of keeping, and what the sources say against each other. */
export const BeforeKeeping = () => (
  <section aria-labelledby="before" className="notice">
    <h2 id="before">Before you keep any</h2>
    <WinterCautionList
      cautions={WINTER_CAUTIONS.filter(({ topic }) => topic === "first winter" || topic === "wet ground")}
    />
    <p>
      A cap on the share of beds that may be kept is set on <a href="/farm#keeping">Farm</a>; the search keeps to it.
    </p>
    <details>
      <summary>The sources do not agree on hardiness</summary>
      <WinterCautionList cautions={HARDINESS} />
    </details>
  </section>
);
