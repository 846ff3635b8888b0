import { describe, expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { SOURCES } from "#lib/domain/catalogue/sources";
import type { CatalogueCrop } from "#lib/domain/catalogue-types";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { ASIDE, CHECKED, type Figure, PUBLISHED } from "./checked-crops";

/** Whether marks say what their sources say: each built-in crop held once against all that was found of it. */

const key = ({
  crop,
  number,
  count,
  source,
}: Pick<(typeof PUBLISHED)[number], "crop" | "number" | "count" | "source">) =>
  `${crop}, ${number}: ${count} (${source})`;

/** Every number of the catalogue that is marked as published, as a list of words. */
const publishedNumbers = (catalogue: readonly CatalogueCrop[]): string[] =>
  catalogue.flatMap((crop) => [
    ...(Object.keys(CROP_NUMBERS) as (keyof typeof CROP_NUMBERS)[]).flatMap((number) => {
      const { mark, count, source } = crop[number];
      return mark === "published" ? [key({ crop: crop.name, number, count, source: source ?? "" })] : [];
    }),
    ...crop.curves.flatMap(({ treatment, stemsPerPlantByWeek, anchor, heatBaseC, ...curve }) => {
      const of = (part: string, count: number, { mark, source }: typeof curve.timingOrigin) =>
        mark === "published"
          ? [key({ crop: crop.name, number: `${treatment} ${part}`, count, source: source ?? "" })]
          : [];
      const stems = stemsPerPlantByWeek.reduce((sum, ofWeek) => sum + ofWeek, 0);
      return [
        ...of("timing", anchor.kind === "days-after-planting" ? anchor.days : 0, curve.timingOrigin),
        ...of("stems", Math.round(stems * 100) / 100, curve.yieldOrigin),
        ...of("heat", heatBaseC ?? 0, curve.heatOrigin),
      ];
    }),
  ]);

/** The sources that marks of a crop name for a figure, and those that any note of it names. */
function namedFor({ curves, holdDays, dryHoldDays, stretchDays }: CatalogueCrop, figure: Figure): Set<string> {
  const marks = {
    hold: [holdDays, dryHoldDays, stretchDays],
    timing: curves.map(({ timingOrigin }) => timingOrigin),
    yield: curves.map(({ yieldOrigin }) => yieldOrigin),
  }[figure];
  const inNotes = curves.flatMap(({ note }) => [...note.matchAll(/\b[A-Z]{3,}(?:-[A-Z0-9]+)?\b/g)].map(([id]) => id));
  return new Set([...marks.flatMap(({ source }) => source ?? []), ...inNotes]);
}

const FIGURES = ["hold", "timing", "yield"] as const;

/** How a number that stands on nothing found of its crop may be marked; a hold also by the general statement on all crops. */
const OF_OWN = ["from memory", "common practice"];
const OF_ALL_CROPS = "GPN-SUBZERO";

describe("marks", () => {
  test("a number is marked as published only where its source says that number for that crop, at a place that is told", () => {
    expect(publishedNumbers(CATALOGUE)).toEqual(PUBLISHED.map(key));
    for (const { place, source } of PUBLISHED) {
      expect(place, source).toMatch(/\w{4}/);
      expect(SOURCES[source]?.address, source).toMatch(/^https?:/);
    }
  });

  test("a mark without source, or of another number, would be refused", () => {
    const [sunflower] = CATALOGUE.filter(({ name }) => name === "Sunflower");
    const numbers = (given: Partial<CatalogueCrop>) => publishedNumbers([{ ...sunflower, ...given }]);
    const listed = PUBLISHED.filter(({ crop }) => crop === "Sunflower").map(key);
    expect(numbers({})).toEqual(listed);
    expect(numbers({ holdDays: { count: 4, mark: "published", source: "SUNF-2023" } })).not.toEqual(listed);
    expect(numbers({ fieldDays: { count: 2, mark: "published", source: null } })).not.toEqual(listed);
  });

  test("no crop is left unchecked, and none is checked that is not built in", () => {
    expect(Object.keys(CHECKED)).toEqual(CATALOGUE.map(({ name }) => name));
  });

  test.each(CATALOGUE)(
    "$name: what was found of its hold, timing and stems is named by its mark or note, or left aside for a reason",
    (crop) => {
      for (const figure of FIGURES) {
        const named = namedFor(crop, figure);
        const unused = CHECKED[crop.name][figure].filter((id) => !named.has(id) && !ASIDE[`${crop.name} ${id}`]);
        expect(unused, figure).toEqual([]);
      }
    },
  );

  test.each(CATALOGUE)("$name: no mark names a source of which nothing was found for that figure", (crop) => {
    const faults = FIGURES.flatMap((figure) => {
      const marks = {
        hold: [crop.holdDays],
        timing: crop.curves.map(({ timingOrigin }) => timingOrigin),
        yield: crop.curves.map(({ yieldOrigin }) => yieldOrigin),
      }[figure];
      return marks.filter(({ mark, source }) =>
        source === null
          ? !OF_OWN.includes(mark)
          : !(CHECKED[crop.name][figure].includes(source) || (figure === "hold" && source === OF_ALL_CROPS)),
      );
    });
    expect(faults).toEqual([]);
  });

  test("what is left aside was found, and is not named after all", () => {
    for (const place of Object.keys(ASIDE)) {
      const crop = CATALOGUE.find(({ name }) => place.startsWith(`${name} `));
      const id = place.slice((crop?.name.length ?? 0) + 1);
      expect(crop && FIGURES.some((figure) => CHECKED[crop.name][figure].includes(id)), place).toBe(true);
    }
  });
});
