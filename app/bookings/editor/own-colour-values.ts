import type { Parsed } from "#lib/domain/problem";
import { type Farm, farmSchema } from "#lib/domain/records/farm-settings";
import { sameWord } from "#lib/domain/same-word";
import type { FormValues } from "../../ui/form-values";

/** The farm with a colour name of its own, in place of what it said of that name before. */
export function readOwnColour(values: FormValues, farm: Farm): Parsed<Farm> {
  const name = values.text("name");
  const others = farm.ownColours.filter((own) => sameWord(own.name) !== sameWord(name));
  return values.parse(farmSchema, { ...farm, ownColours: [...others, { name, colour: values.text("colour") }] });
}
