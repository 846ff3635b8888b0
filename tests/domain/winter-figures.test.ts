import { describe, expect, test } from "vitest";
import { newFarm } from "#lib/domain/new-farm";
import type { Farm } from "#lib/domain/records/farm-settings";
import { farmSchema } from "#lib/domain/records/farm-settings";
import {
  changedWinterFigures,
  WINTER_FIGURES_EDITION,
  withWinterFiguresKept,
  withWinterFiguresTaken,
} from "#lib/domain/winter-figures";
import { winterFiguresOutcome } from "#lib/plan/what-if/winter-figures-outcome";
import { winterFarm } from "../plan/winter/farm";

/** A farm as the first edition began one. */
const older = (given: Partial<Farm["winter"]> = {}): Farm => {
  const today = newFarm("Hill");
  return {
    ...today,
    winter: {
      ...today.winter,
      ...{ leafSettlingShare: 0, leafEdgeMetres: 0, leafHaulHoursPerCubicMetre: 0, tarpEdgeMetres: 0 },
      ...{ replantDeadShare: 0, freeBedCentsPerSquareMetre: 150, figuresEdition: 1 },
      ...given,
    },
  };
};

describe("built-in figures of the winter", () => {
  test("[W9] a farm of the first edition is offered six, and with all taken it is as a new farm", () => {
    expect(changedWinterFigures(older())).toHaveLength(6);
    expect(withWinterFiguresTaken(older())).toEqual(newFarm("Hill"));
    expect(farmSchema.parse(withWinterFiguresTaken(older()))).toEqual(newFarm("Hill"));
  });

  test("[W9] a figure that the grower typed is not offered and stays", () => {
    const hers = older({ freeBedCentsPerSquareMetre: 400, tarpEdgeMetres: 0.3 });
    expect(changedWinterFigures(hers).map(({ name }) => name)).not.toContain("tarpEdgeMetres");
    expect(withWinterFiguresTaken(hers).winter).toMatchObject({ freeBedCentsPerSquareMetre: 400, tarpEdgeMetres: 0.3 });
  });

  test("[W9] kept or taken, none is offered again, and a new farm is offered none; keeping changes no figure", () => {
    for (const settled of [withWinterFiguresKept(older()), withWinterFiguresTaken(older()), newFarm("Hill")])
      expect(changedWinterFigures(settled)).toEqual([]);
    expect(withWinterFiguresKept(older())).toEqual(older({ figuresEdition: WINTER_FIGURES_EDITION }));
  });

  test("[W9] what they make of a winter is told before they are taken: tarps past the edge alone cost more", () => {
    const drawn = winterFarm(3, 16, 8, false);
    const plantings = drawn.plantings.map((row) => ({ ...row, treatment: "kept-in-ground" as const }));
    const farm = { ...drawn, plantings };
    const { winter } = farm.farm;
    const asBefore = { ...winter, tarpEdgeMetres: 0, figuresEdition: 1 };
    const { nowCents, thenCents } = winterFiguresOutcome({ ...farm, farm: { ...farm.farm, winter: asBefore } }, 2027);
    expect(thenCents).toBeGreaterThan(nowCents);
    const settled = winterFiguresOutcome(farm, 2027);
    expect(settled.thenCents).toBe(settled.nowCents);
  });
});
