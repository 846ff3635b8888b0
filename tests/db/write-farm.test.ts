import { expect, test } from "vitest";
import { hasFarm } from "#db/read/read";
import { emptyFarm, startFarm, updateFarm } from "#db/write/farm";
import { keepFirstCuts } from "#db/write/first-cuts";
import { putRecipe, removeRecipe } from "#db/write/recipes";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { newFarm } from "#lib/domain/new-farm";
import { crop, day, farm, monthDay, recipe } from "../small-farm";
import { done, kept, refused, withDatabase, withFarm } from "./kept-farm";

const START = { farm: newFarm("Alder Bank"), crops: CATALOGUE, recipes: DEFAULT_RECIPES };
const withoutId = <Row extends { id: number }>({ id: _, ...row }: Row) => row;

test("a started farm holds its settings and the built-in crops, curves and recipes, each number with its origin", () => {
  withDatabase((database) => {
    done(startFarm(database, START));
    const { farm: settings, crops, curves, recipes, ...rest } = kept(database);
    expect(settings).toEqual(START.farm);
    expect(crops.map((row) => ({ ...withoutId(row), curves: curvesOf(row.id) }))).toEqual(CATALOGUE);
    expect(recipes.map(withoutId)).toEqual(DEFAULT_RECIPES);
    expect(rest).toEqual({
      varieties: [],
      beds: [],
      plantings: [],
      bookings: [],
      coolerStock: [],
      standingOrders: [],
      cuts: [],
      coolerMoves: [],
      purchases: [],
      budLooks: [],
      losses: [],
      firstCuts: [],
      reviews: [],
      weather: null,
    });

    function curvesOf(id: number) {
      return curves
        .filter(({ cropId }) => cropId === id)
        .map(({ id: _, cropId: __, varietyId: ___, plantingId: ____, ...curve }) => curve);
    }
  });
});

test("a farm is started once", () => {
  withFarm((database) => {
    const before = kept(database);
    expect(refused(startFarm(database, START))).toEqual(["farm: a farm has been started here already"]);
    expect(kept(database)).toEqual(before);
  });
});

test("a start with the same crop twice is refused whole", () => {
  withDatabase((database) => {
    const twin = { ...crop({ id: 1, name: "Aster" }), curves: [] };
    expect(refused(startFarm(database, { farm: farm(), crops: [twin, twin], recipes: [] }))).toEqual([
      "crops[1].name: a crop called Aster is there already: choose another name",
    ]);
    expect(hasFarm(database)).toBe(false);
  });
});

test("every setting of the farm can be changed", () => {
  withFarm((database) => {
    const before = farm();
    const changed = {
      name: "Über den Wiesen’s “Feld”",
      isInvented: false,
      zone: "6b",
      units: "metric" as const,
      decimalMark: "comma" as const,
      dateOrder: "day first" as const,
      ownColours: [{ name: "antique rose", colour: "pink" as const }],
      pickingWeekdays: [7, 2],
      ...{ leadDays: 3, wornLaterDays: 2, designDays: 2, deliverDays: 1 },
      orderDaysAhead: 10,
      finalCountDays: 21,
      enquiryDays: 10,
      holdDays: 45,
      spareShare: 0.15,
      promiseLossCents: 2500,
      storeC: 3.5,
      coolRoomC: 12.8,
      storesDry: false,
      followsSeason: false,
      frostAlarmC: 1.5,
      coldNightOn: day("2027-10-07"),
      coldNightLowC: -0.5,
      killingFrosts: [day("2026-10-14"), day("2027-09-28")],
      learnedWinters: [{ part: "ground" as const, was: 0.75, is: 0.82 }],
      ...{ cutStemsPerHour: 120, cutHoursPerDay: 5.5, benchStemsPerHour: 40, benchHoursPerWeek: 30, bucketPlaces: 24 },
      frost: {
        firstAutumnP10: monthDay("09-20"),
        firstAutumnP50: monthDay("10-01"),
        firstAutumnP90: monthDay("10-20"),
        lastSpringP10: monthDay("05-30"),
        lastSpringP50: monthDay("05-12"),
        lastSpringP90: monthDay("04-28"),
      },
      climate: CLIMATE_STATIONS[0],
      statusWeights: { confirmed: 0.95, held: 0.5, enquiry: 0.1 },
      winter: {
        ...before.winter,
        leafCubicMetresAtHand: 12.5,
        tarpSquareMetresAtHand: 0,
        hoursAtHand: 40,
        keepShareAtMost: 1 / 3,
      },
    };
    done(updateFarm(database, changed));
    expect(kept(database).farm).toEqual(changed);
    done(updateFarm(database, before));
    expect(kept(database).farm).toEqual(before);
  });
});

test("settings of a farm that was not started, and emptying it, are refused", () => {
  withDatabase((database) => {
    const why = ["farm: the farm has not been started yet"];
    expect(refused(updateFarm(database, farm()))).toEqual(why);
    expect(refused(emptyFarm(database, "Mine"))).toEqual(why);
    expect(hasFarm(database)).toBe(false);
  });
});

test("an emptied farm keeps crops, their curves, recipes and settings, under its new name and as a real farm", () => {
  withFarm((database) => {
    const { crops, curves, recipes, farm: settings } = kept(database);
    const first = { cropId: 1, varietyId: null, treatment: "field", plantedOn: null } as const;
    done(keepFirstCuts(database, [{ ...first, seasonYear: 2026, firstCut: day("2026-05-14") }]));
    done(emptyFarm(database, "Mine"));
    expect(kept(database)).toEqual({
      farm: { ...settings, name: "Mine", isInvented: false },
      crops,
      curves,
      recipes,
      varieties: [],
      beds: [],
      plantings: [],
      bookings: [],
      coolerStock: [],
      standingOrders: [],
      cuts: [],
      coolerMoves: [],
      purchases: [],
      budLooks: [],
      losses: [],
      firstCuts: [],
      reviews: [],
      weather: null,
    });
  });
});

test("a recipe is added, replaced by its name or by its id, and its lines stay in order", () => {
  withFarm((database) => {
    const lines = [
      { role: "foliage" as const, stemsPerPiece: 0.25, asks: [], colours: "any" as const },
      { role: "focal" as const, stemsPerPiece: 7, asks: [], colours: "palette" as const },
      { role: "line" as const, stemsPerPiece: 1.5, asks: [], colours: "palette" as const },
    ];
    const { result: id } = done(putRecipe(database, { name: "Garland", unit: "foot", origin: "own", lines }));
    expect(kept(database).recipes.at(-1)).toEqual({ id, name: "Garland", unit: "foot", origin: "own", lines });

    const fewer = { name: "Garland", unit: "metre", origin: "own", lines: [lines[1], lines[0]] };
    expect(done(putRecipe(database, fewer)).result).toBe(id);
    expect(kept(database).recipes.at(-1)).toEqual({ id, ...fewer });

    done(putRecipe(database, { ...fewer, id, name: "Swag", lines: [...lines, lines[0]] }));
    expect(kept(database).recipes.at(-1)).toEqual({ ...fewer, id, name: "Swag", lines: [...lines, lines[0]] });
  });
});

test("a recipe is not renamed to another's name, nor removed while a booking asks for it", () => {
  withFarm((database) => {
    const before = kept(database);
    expect(refused(putRecipe(database, recipe({ id: 2, name: "Piece 1" })))).toEqual([
      "name: a recipe called Piece 1 is there already: choose another name",
    ]);
    expect(refused(putRecipe(database, recipe({ id: 99 })))).toEqual(["id: this recipe is not on the farm"]);
    expect(refused(removeRecipe(database, 1))).toEqual([
      "id: Piece 1 is named by 1 line of a booking: remove or change those first",
    ]);
    expect(kept(database)).toEqual(before);
    done(removeRecipe(database, 2));
    expect(kept(database).recipes).toEqual([before.recipes[0]]);
  });
});
