import type { WinterProposal } from "#lib/plan/learning/review/winter-proposals";
import { countOf, inPercent, inWholes } from "./numbers";

/** "Survival in the ground" · "Lost in store" */
export const winterFigureNamed = ({ part }: Pick<WinterProposal, "part">): string =>
  part === "ground" ? "Survival in the ground" : "Lost in store";

/** "82 %, now 75 %" */
export const winterProposalInWords = ({ was, is }: Pick<WinterProposal, "was" | "is">): string =>
  `${inPercent(is)}, now ${inPercent(was)}`;

/** "Rests on 2 winters: to spring 2026 96 of 120 clumps came through, to spring 2027 70 of 80" */
export const wintersInWords = ({ winters }: Pick<WinterProposal, "winters">): string =>
  `Rests on ${countOf(winters.length, "winter")}: ${winters
    .map(
      ({ spring, clumps, cameThrough }, index) =>
        `to spring ${spring} ${inWholes(cameThrough)} of ${countOf(clumps, "clump")}${index === 0 ? " came through" : ""}`,
    )
    .join(", ")}.`;
