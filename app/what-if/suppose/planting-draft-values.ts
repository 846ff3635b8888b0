import { PERCENT } from "#lib/domain/measures";
import type { Snapshot } from "#lib/domain/snapshot";
import type { FormValues } from "../../ui/form-values";
import { chosen } from "./chosen";

/** A planting that might be, as its form says; not checked yet. What the form does not ask stays as a new planting has it. */
export function readPlantingDraft(values: FormValues, { beds, varieties }: Snapshot, seasonYear: number): unknown {
  const share = (name: "aliveShare" | "gradeOutShare") =>
    values.number(`planting.${name}`, { measure: PERCENT, range: "a percentage from 0 to 100" });
  return {
    bedId: chosen(values, "planting.bedId", beds, "a bed"),
    varietyId: chosen(values, "planting.varietyId", varieties, "a variety"),
    seasonYear,
    treatment: values.text("planting.treatment"),
    plantedOn: values.text("planting.plantedOn"),
    plantCount: values.number("planting.plantCount"),
    aliveShare: share("aliveShare"),
    gradeOutShare: share("gradeOutShare"),
    winterSurvivalShare: null,
    flags: [],
  };
}
