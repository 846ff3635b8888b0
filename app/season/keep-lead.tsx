import { stemsShort } from "#lib/plan/road/gaps";
import { inRoundMoney, inWholes, inWords } from "#lib/plan/words/numbers";
import { rankedGaps, restsOnInWords, staysShortInWords } from "#lib/plan/words/season-lead";
import { adoptBeds } from "../keep-or-dig/actions";
import { Form } from "../ui/form.client";
import type { KeepDecision } from "./decision";
import { Specimens } from "./specimens";

/** The winter's decision as the answer of the season: what keeping these beds covers, what it saves, what stays short, and the button that does it. */
export function KeepLead({ decision: { kept, winters, board, isDone } }: { decision: KeepDecision }) {
  const { dug, tried } = winters;
  const left = rankedGaps(tried.gaps, "focal");
  const shortStems = stemsShort(rankedGaps(dug.gaps, "focal"));
  const savedCents = board.winters[0].weighedCents - board.winters[2].weighedCents;
  const these = kept.length === 1 ? "this bed stays" : `these ${inWords(kept.length)} beds stay`;
  return (
    <section key="keep" className="season-lead with-picture" aria-labelledby="answer">
      <div className="lead-words">
        <h1 id="answer">
          <span className="great">
            {inWholes(shortStems - stemsShort(left))} of {inWholes(shortStems)}
          </span>
          short focal stems are covered {isDone ? "now that" : "if"} {these} in the ground.
        </h1>
        <p className="lead">
          <b>{inRoundMoney(savedCents)} better</b> than digging every bed. {staysShortInWords(left)}
        </p>
        <p className="small">
          Proved best for these numbers: {restsOnInWords(kept, tried)}. <a href="/farm">Change them</a>
        </p>
        <Adopt decision={{ kept, winters, isDone }} />
      </div>
      <Specimens beds={kept} />
    </section>
  );
}

function Adopt({
  decision: { kept, winters, isDone },
}: {
  decision: Pick<KeepDecision, "kept" | "winters" | "isDone">;
}) {
  const other = (
    <a className="button" href="/keep-or-dig">
      Choose other beds
    </a>
  );
  if (isDone)
    return (
      <p className="actions">
        <a className="button main" href="/keep-or-dig/worksheet">
          Winter worksheet
        </a>
        {other}
      </p>
    );
  return (
    <Form
      action={adoptBeds}
      submit={kept.length === 1 ? "Adopt this bed" : `Adopt these ${inWords(kept.length)}`}
      hidden={{ seasonYear: winters.tried.seasonYear, keptBedIds: kept.map(({ bed }) => bed.id).join() }}
      label="Adopt these beds"
      beside={other}
    />
  );
}
