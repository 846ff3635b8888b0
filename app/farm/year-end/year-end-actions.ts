"use server";

import { setFigure } from "#db/write/farm";
import { putFigures } from "#db/write/figures";
import { toDayNumber } from "#lib/domain/day";
import { curveProposals, curveWith } from "#lib/plan/learning/review/curve-proposals";
import { winterProposals, withWinterLearned } from "#lib/plan/learning/review/winter-proposals";
import { curveNamed, proposalInWords } from "#lib/plan/words/learned-words";
import { winterFigureNamed, winterProposalInWords } from "#lib/plan/words/winter-lesson-words";
import { action, refusal } from "../../action";
import { today } from "../../clock";

const NOT_ANY_MORE = refusal("", "this is not proposed any more: the page shows what is");

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
    return found ? { ok: true, parsed: found } : NOT_ANY_MORE;
  },
  (database, proposal) =>
    putFigures(database, `took from recorded seasons: ${curveNamed(proposal)}, ${proposalInWords(proposal)}`, {
      crops: [],
      curves: [curveWith(proposal)],
      recipes: [],
    }),
);

/** Takes what counted winters taught of survival in the ground or of loss in store, if it is still what the page showed. */
export const takeWinterProposal = action(
  (values, snapshot) => {
    const found = winterProposals(snapshot).find(
      ({ part, is }) => part === values.text("part") && is === values.hiddenNumber("is"),
    );
    return found ? { ok: true, parsed: { found, farm: snapshot.farm } } : NOT_ANY_MORE;
  },
  (database, { found, farm }) =>
    setFigure(
      database,
      withWinterLearned(farm, found),
      `took from counted winters: ${winterFigureNamed(found)}, ${winterProposalInWords(found)}`,
    ),
);
