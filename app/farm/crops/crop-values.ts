import { type Crop, cropSchema } from "#lib/domain/crop";
import { DOLLARS } from "#lib/domain/measures";
import type { Parsed } from "#lib/domain/problem";
import { type Variety, varietySchema } from "#lib/domain/records/variety";
import { OWN } from "#lib/domain/sourced";
import type { FormValues } from "../../ui/form-values";
import { CROP_NUMBERS } from "./crop-numbers";

const cropDraftSchema = cropSchema.omit({ id: true }).refine(({ roles, usualRole }) => roles.includes(usualRole), {
  path: ["usualRole"],
  message: "the usual role must be one of the crop’s roles",
});

/**
 * A crop as its form says, or every problem noted in `values`. A number that differs from `before` becomes the farm's own; the others keep
 * their mark.
 */
export function readCrop(values: FormValues, before: Crop | undefined): Parsed<Omit<Crop, "id">> {
  const numbers = CROP_NUMBERS.map(({ name, measure }) => {
    const range = measure === DOLLARS ? "at least 0.01, and at most 1000" : undefined;
    const count = values.number(name, { measure, before: before?.[name].count, range });
    return [name, count === before?.[name].count ? before[name] : { count, ...OWN }];
  });
  return values.parse(cropDraftSchema, {
    name: values.text("name"),
    scientific: values.text("scientific"),
    shape: values.text("shape"),
    roles: values.texts("roles"),
    usualRole: values.text("usualRole"),
    tender: values.isTicked("tender"),
    overwinters: values.isTicked("overwinters"),
    ...Object.fromEntries(numbers),
    cutStage: values.text("cutStage"),
    cautions: values
      .text("cautions")
      .split(/\r?\n/)
      .map((line) => line.trim())
      .filter((line) => line !== ""),
  });
}

const varietyDraftSchema = varietySchema.omit({ id: true });

/** A variety as its form says. */
export const readVariety = (values: FormValues): Parsed<Omit<Variety, "id">> =>
  values.parse(varietyDraftSchema, {
    cropId: values.hiddenNumber("cropId"),
    name: values.text("name"),
    colour: values.text("colour"),
  });
