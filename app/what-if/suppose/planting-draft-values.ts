import { PLANTING, type PlantingDraft } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { FormValues } from "../../ui/form-values";
import { chosen } from "./chosen";

/** A planting that might be, as its form says, or null when it was refused. What the form does not ask stays as a new planting has it. */
export function readPlantingDraft(
  values: FormValues,
  { farm, beds, varieties }: Snapshot,
  seasonYear: number,
): PlantingDraft | null {
  const given = {
    bedId: chosen(values, "planting.bedId", beds, "a bed"),
    varietyId: chosen(values, "planting.varietyId", varieties, "a variety"),
    seasonYear,
    winterSurvivalShare: null,
    flags: [],
  };
  const read = values.record(PLANTING, farm, { root: "planting.", given });
  return read.ok ? read.parsed : null;
}
