"use server";

import { putFigures } from "#db/write/figures";
import { toDayNumber } from "#lib/domain/day";
import { curveProposals, curveWith } from "#lib/plan/learning/review/curve-proposals";
import { curveNamed, proposalInWords } from "#lib/plan/words/learned-words";
import { action, refusal } from "../../action";
import { today } from "../../clock";

/** Takes what recorded seasons taught of one curve, if it is still what the page showed. */
export const takeProposal = action(
  (values, farm) => {
    const found = curveProposals(farm, toDayNumber(today())).find(
      ({ curve, part, is }) =>
        curve.id === values.hiddenNumber("curveId") &&
        part === values.text("part") &&
        is.laterDays === values.hiddenNumber("laterDays") &&
        is.yieldFactor === values.hiddenNumber("yieldFactor"),
    );
    return found ? { ok: true, parsed: found } : refusal("", "this is not proposed any more: the page shows what is");
  },
  (database, proposal) =>
    putFigures(database, `took from recorded seasons: ${curveNamed(proposal)}, ${proposalInWords(proposal)}`, {
      crops: [],
      curves: [curveWith(proposal)],
      recipes: [],
    }),
);
