import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { FROST_STATIONS } from "#lib/domain/catalogue/frost-stations";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { HARDINESS_ZONES } from "#lib/domain/catalogue/zones";
import { cropSchema } from "#lib/domain/records/crop";
import { bloomCurveSchema } from "#lib/domain/records/curve";
import { recipeSchema } from "#lib/domain/records/recipe";
import type { Origin } from "#lib/domain/sourced";
import { ROLES } from "#lib/domain/words";

const numbersOf = (crop: (typeof CATALOGUE)[number]): Origin[] => [
  crop.holdDays,
  crop.stretchDays,
  crop.dryHoldDays,
  crop.holdUpToC,
  crop.notColderC,
  crop.cutSpareShare,
  crop.fieldDays,
  crop.bunchStems,
  crop.bucketStems,
  crop.buyInCents,
  ...crop.curves.flatMap((curve) => [curve.timingOrigin, curve.yieldOrigin, curve.heatOrigin]),
];

const origins: Origin[] = [
  ...CATALOGUE.flatMap(numbersOf),
  ...HARDINESS_ZONES.map((zone) => zone.origin),
  ...FROST_STATIONS.map((station) => station.origin),
];

const textOf = (folder: string): string =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.endsWith("sources.ts"))
    .map((path) => readFileSync(join(folder, path), "utf8"))
    .join("\n");

describe("crops", () => {
  test.each(CATALOGUE)(
    "$name passes the crop schema, and every curve of it the curve schema",
    ({ curves, ...crop }) => {
      expect(cropSchema.parse({ id: 1, ...crop })).toEqual({ id: 1, ...crop });
      for (const curve of curves) {
        const row = { id: 1, cropId: 1, varietyId: null, plantingId: null, ...curve };
        expect(bloomCurveSchema.parse(row)).toEqual(row);
      }
    },
  );

  test("there are at least 28 crops, in alphabetical order, and no name comes twice", () => {
    const names = CATALOGUE.map((crop) => crop.name);
    expect(names.length).toBeGreaterThanOrEqual(28);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual([...names].sort());
  });

  test("every role has at least three crops that usually take it, and each crop can take its usual role", () => {
    for (const crop of CATALOGUE) expect(crop.roles, crop.name).toContain(crop.usualRole);
    for (const role of ROLES)
      expect(CATALOGUE.filter((crop) => crop.usualRole === role).length, role).toBeGreaterThanOrEqual(3);
  });

  test("every crop has a curve, and no crop two for one treatment", () => {
    for (const { name, curves } of CATALOGUE) {
      const treatments = curves.map((curve) => curve.treatment);
      expect(treatments.length, name).toBeGreaterThanOrEqual(1);
      expect(new Set(treatments).size, name).toBe(treatments.length);
    }
  });

  test("dahlias, and nothing else, can be kept in the ground or dug: both futures have a curve", () => {
    const choices = CATALOGUE.filter((crop) => crop.overwinters);
    expect(choices.map((crop) => crop.name)).toEqual(["Ball dahlia", "Dahlia"]);
    for (const { curves } of choices)
      expect(curves.map((curve) => curve.treatment)).toEqual(["spring-planted", "kept-in-ground"]);
    expect(CATALOGUE.flatMap(({ curves }) => curves).filter((row) => row.treatment === "kept-in-ground").length).toBe(
      2,
    );
  });

  test("a curve that blooms has no empty first or last week", () => {
    for (const { name, curves } of CATALOGUE)
      for (const { treatment, stemsPerPlantByWeek } of curves) {
        expect(stemsPerPlantByWeek[0], `${name}, ${treatment}`).toBeGreaterThan(0);
        expect(stemsPerPlantByWeek.at(-1), `${name}, ${treatment}`).toBeGreaterThan(0);
      }
  });
});

describe("recipes", () => {
  test.each(DEFAULT_RECIPES)("$name passes the recipe schema", (recipe) => {
    expect(recipeSchema.parse({ id: 1, ...recipe })).toEqual({ id: 1, ...recipe });
  });

  test("no name comes twice, and only garlands are counted by the foot", () => {
    const names = DEFAULT_RECIPES.map((recipe) => recipe.name);
    expect(new Set(names).size).toBe(names.length);
    for (const { name, unit } of DEFAULT_RECIPES)
      expect(unit, name).toBe(name.startsWith("Garland") ? "foot" : "piece");
  });
});

describe("sources", () => {
  test("a published or trade number, and our reading of one, names a source that is listed; any other mark names none", () => {
    for (const { mark, source } of origins) {
      const namesOne = ["published", "published-secondary", "trade", "our reading"].includes(mark);
      expect(source !== null, `${mark} ${source}`).toBe(namesOne);
      if (source !== null) expect(SOURCES, source).toHaveProperty([source]);
    }
  });

  test("a curve whose note speaks of our reading or our division of its timing or stems is marked so", () => {
    for (const { name, curves } of CATALOGUE)
      for (const { treatment, note, timingOrigin, yieldOrigin, heatOrigin } of curves) {
        const isMarked = [timingOrigin, yieldOrigin, heatOrigin].some(({ mark }) => mark === "our reading");
        // What is said of heat that ends a bloom, and of late plantings, has its mark in the note alone.
        const ofNumbers = note.replace(/Heat ends it[^.]*\./, "").replace(/Fewer stems from late plantings.*/, "");
        if (/\bour (?:reading|division|own fit)\b/i.test(ofNumbers))
          expect(isMarked, `${name}, ${treatment}`).toBe(true);
      }
  });

  test("no built-in number claims to be the farm's own", () => {
    expect(origins.filter(({ mark }) => mark === "own")).toEqual([]);
  });

  test("every source that the catalogue names in a note or comment is listed", () => {
    const named = new Set(textOf("lib/domain/catalogue").match(/\b[A-Z]{3,}-[A-Z0-9]{3,}\b/g));
    expect(named.size).toBeGreaterThan(30);
    for (const id of named) expect(SOURCES, id).toHaveProperty([id]);
  });

  test("every source that is listed is named by a number, a note or a check", () => {
    const text = textOf("lib") + textOf("tests/truth");
    for (const id of Object.keys(SOURCES)) expect(text.includes(id), id).toBe(true);
  });

  test("every source says what it is, and where it was read unless it was seen only as quoted elsewhere", () => {
    for (const [id, { title, publisher, address }] of Object.entries(SOURCES)) {
      expect(title, id).not.toBe("");
      expect(publisher, id).not.toBe("");
      if (address !== "") expect(() => new URL(address), id).not.toThrow();
      else expect(publisher, id).toMatch(/in a list|as quoted/);
      expect(address, id).not.toMatch(/\/search\b|[?&](?:q|page|q_0)=/);
    }
  });

  test("nothing is called published whose source has no page of its own", () => {
    for (const { mark, source } of origins)
      if (mark === "published") expect(SOURCES[source ?? ""]?.address, source ?? "").not.toBe("");
  });
});

test("hardiness bands follow each other without gap or overlap, cold to warm, 5 F each", () => {
  HARDINESS_ZONES.forEach(({ zone, atLeastFahrenheit, belowFahrenheit }, index) => {
    expect(belowFahrenheit - atLeastFahrenheit, zone).toBe(5);
    if (index > 0) expect(atLeastFahrenheit, zone).toBe(HARDINESS_ZONES[index - 1].belowFahrenheit);
  });
  expect(HARDINESS_ZONES.map(({ zone }) => zone)).toContain("7a");
});
