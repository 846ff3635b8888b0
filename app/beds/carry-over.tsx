import { Form } from "../ui/form.client";
import { carryOver } from "./actions";

/** Copies the plantings of a season into a later one; one change, which can be undone. */
export const CarryOver = ({ fromSeason, toSeason }: { fromSeason: number; toSeason: number }) => (
  <div className="card">
    <p>
      <strong>
        Start {toSeason} from {fromSeason}.
      </strong>{" "}
      All plantings come along: perennials and what is kept in the ground keep the day they were planted, the rest is
      planted on the same day a year on. Change any of it afterwards; the whole copy can be undone.
    </p>
    <Form
      action={carryOver}
      submit={`Copy the plantings of ${fromSeason}`}
      hidden={{ fromSeason, toSeason }}
      label={`Copy the plantings of ${fromSeason} to ${toSeason}`}
    />
  </div>
);
