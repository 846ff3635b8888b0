import type { Farm } from "#lib/domain/records/farm-settings";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { saveFigure } from "./figure-actions";
import { FigureFold, LeaveIt } from "./figure-fold.client";
import { type Figure, figureOf, inOneWord } from "./figure-of";

type Props = { name: string; farm: Farm; suggestions?: readonly string[]; hint?: string };

/** A figure of the farm in a price list's line, which opens into its field. */
export function FigureLine({ name, ...about }: Props) {
  const figure = figureOf(name, about.farm);
  return (
    <li>
      <FigureFold className="figure" saved={inOneWord(figure)} summary={<Line figure={figure} />}>
        <FigureForm figure={figure} {...about} />
      </FigureFold>
    </li>
  );
}

const Line = ({ figure: { field, before, shown, unit } }: { figure: Figure }) => (
  <>
    <span>{field.label}</span>
    <span className="dots" />
    <span className="figure-value">
      {before}
      <b>{shown}</b> <small>{unit}</small>
    </span>
  </>
);

/** The field of a figure, to keep or to leave as it was. */
export const FigureForm = ({ figure, suggestions, hint }: { figure: Figure } & Omit<Props, "name" | "farm">) => (
  <Form
    action={saveFigure}
    submit="Keep"
    label={figure.field.label}
    hidden={{ figure: figure.field.name }}
    beside={<LeaveIt words={`Leave ${inOneWord(figure)}`} />}
  >
    <RecordField {...figure.field} suggestions={suggestions} hint={hint ?? figure.field.hint ?? hintOf(figure)} />
  </Form>
);

/** How a day of the year is written, and what an empty field means. */
function hintOf({ field }: Figure): string | undefined {
  if (/^\d\d-\d\d$/.test(field.values[0] ?? "")) return "Written month-day: 10-18 is the 18th of October.";
  return field.name.endsWith("AtHand") ? "Left empty: as much as is wanted." : undefined;
}
