import type { Parsed, Problem } from "#lib/domain/problem";
import { type Farm, farmSchema } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import type { FormValues } from "../../ui/form-values";
import { figureOf, inOneWord, settingNamed, settingValue } from "./figure-of";

type Kept = { readonly farm: Farm; readonly name: string };

/** The farm with the one figure that the form names. What it breaks of a rule over several, such as the order of frost dates, is told at its field. */
export function readFigure(values: FormValues, { farm }: Snapshot): Parsed<Kept> {
  const name = values.text("figure");
  const setting = settingNamed(name);
  if (!setting) return refused("", "this is no figure of the farm: open the page again");
  const root = name.slice(0, name.length - setting.name.length);
  const before = { [setting.name]: settingValue(setting, farm) };
  const read = values.record({ [setting.name]: setting.field }, farm, { before, root });
  if (!read.ok) return read;
  const checked = farmSchema.safeParse(
    setting.group === null
      ? { ...farm, ...read.parsed }
      : { ...farm, [setting.group]: { ...farm[setting.group], ...read.parsed } },
  );
  if (checked.success) return { ok: true, parsed: { farm: checked.data, name } };
  return refused(name, checked.error.issues.map(({ message }) => message).join("; "));
}

const refused = (place: string, message: string): { readonly ok: false; readonly problems: readonly Problem[] } => ({
  ok: false,
  problems: [{ place, message }],
});

/** What the history says of it: "changed “A tuber costs”, now $7.00". */
export function figureWords(name: string, farm: Farm): string {
  const figure = figureOf(name, farm);
  return `changed “${figure.field.label}”, now ${inOneWord(figure)}`;
}
