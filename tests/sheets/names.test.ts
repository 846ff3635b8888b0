import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const PLANTINGS = "bed,crop,variety,colour,season,treatment,planted_on,plants\n";
const PIECES = "client,event_on,recipe,count\n";
const BOOKINGS = "client,event_on,not_wanted\n";

test("a name that is nowhere is a problem with where to add it and the nearest name", () => {
  expect(
    problemLines({
      "plantings.csv": `${PLANTINGS}D9,Dahlia,Maple Row,plum,2027,field,2027-05-20,7\nD8,Dalhia,Maple Row,plum,2027,field,2027-05-20,7\nD8,Dahlia,Maple Roe,,2027,field,2027-05-20,7\n`,
    }),
  ).toEqual([
    'plantings.csv:2 bed: no bed called "D9": add it to the beds sheet or mend the name; did you mean "D8"?',
    'plantings.csv:3 crop: no crop called "Dalhia": add it to the crops sheet or mend the name; did you mean "Dahlia"?',
    'plantings.csv:4 variety: no variety "Maple Roe" of Dahlia: add it with its colour to the varieties sheet, or mend the name; did you mean "Maple Row"?',
  ]);
});

test("a row that names a row with a problem says which row to mend first", () => {
  expect(
    problemLines({
      "plantings.csv": `${PLANTINGS}D10,Dahlia,Maple Row,plum,2027,field,2027-05-20,7\n`,
      "beds.csv": "bed,length_m,width_m\nD10,long,1\n",
    }),
  ).toEqual([
    'plantings.csv:2 bed: bed "D10" is on line 2 of beds.csv, which has a problem: mend that row first',
    'beds.csv:2 length_m: "long" is not a number: write digits alone, with a point for decimals, for example 12.5',
  ]);
});

test("names are found in any letter case and come in the spelling of the farm or of their own row", () => {
  const { records, problems } = read({
    "beds.csv": "bed,length_m,width_m\nNorth Strip,10,1\n",
    "plantings.csv": `${PLANTINGS}north  strip,DAHLIA,maple row,plum,2027,field,2027-05-20,7\n`,
    "crops.csv":
      "crop,shape,roles,hold_days,field_days,bunch_stems,bucket_stems,buy_in_cents\ndahlia,mass,focal / secondary,5,2,10,40,250\n",
  });
  expect(problems).toEqual([]);
  expect(records.plantings?.[0]).toMatchObject({ bed: "North Strip", crop: "Dahlia", variety: "Maple Row" });
  expect(records.crops?.[0]).toMatchObject({
    name: "Dahlia",
    usualRole: "focal",
    holdDays: { count: 5, mark: "own", source: null },
  });
});

test("plantings may bring new varieties, and curves may then name them", () => {
  const { records, problems } = read({
    "curves.csv":
      "crop,variety,treatment,first_cut,stems_per_plant_by_week,first_cut_spread_days,yield_spread\nDahlia,Cold Frame,field,08-01,0.5 / 1 / 1.5,7,0.3\n",
    "plantings.csv": `${PLANTINGS}D8,Dahlia,Cold Frame,white,2027,field,2027-05-20,7\nD8,Dahlia,cold frame,,2027,field,2027-06-20,7\n`,
  });
  expect(problems).toEqual([]);
  expect(records.plantings?.map(({ variety, colour }) => [variety, colour])).toEqual([
    ["Cold Frame", "white"],
    ["Cold Frame", "white"],
  ]);
  expect(records.curves?.[0]).toMatchObject({ variety: "Cold Frame", stemsPerPlantByWeek: [0.5, 1, 1.5] });
});

test("a variety has one colour, on the farm and in the sheets, and its own row may change it; the same one twice does no harm", () => {
  const sheet = "crop,variety,colour\n";
  expect(read({ "varieties.csv": `${sheet}Dahlia,Maple Row,plum\nDahlia,New,red\nDahlia,New,red\n` }).problems).toEqual(
    [],
  );
  expect(problemLines({ "varieties.csv": `${sheet}Dahlia,New,red\nDahlia,New,pink\n` })).toEqual([
    'varieties.csv:3 colour: "New" of Dahlia is red on line 2 of varieties.csv, not pink: a variety has one colour, mend it or give this variety another name',
  ]);
  const planted = `${PLANTINGS}D8,Dahlia,Maple Row,blush,2027,field,2027-07-01,7\n`;
  expect(problemLines({ "plantings.csv": planted })).toEqual([
    'plantings.csv:2 colour: "Maple Row" of Dahlia is plum on the farm, not blush: a variety has one colour, mend it or give this variety another name',
  ]);
  expect(problemLines({ "plantings.csv": planted, "varieties.csv": `${sheet}Dahlia,Maple Row,blush\n` })).toEqual([]);
});

test("what stands on another row of the upload is not recorded twice", () => {
  const found = problemLines({
    "beds.csv": "bed,length_m,width_m\nD11,10,1\nd11,12,1\n",
    "bookings.csv": `${BOOKINGS}Ivy,2027-06-12,\nivy,2027-06-12,\n`,
    "plantings.csv": `${PLANTINGS}D8,Dahlia,Maple Row,,2027,field,2027-07-01,7\nD8,Dahlia,Maple Row,,2027,field,2027-07-01,7\n`,
    "cooler.csv": "crop,variety,cut_on,stems\nDahlia,Maple Row,2027-08-02,40\nDahlia,Maple Row,2027-08-02,40\n",
    "recipes.csv": "recipe,role,stems_per_piece\nPosy,focal,3\n",
  });
  expect(found.map((problem) => problem.split(":", 2).join(":"))).toEqual([
    "beds.csv:3 bed",
    "bookings.csv:3 client",
    "plantings.csv:3 row",
  ]);
  expect(found.every((problem) => /: (keep|take|mend) /.test(problem))).toBe(true);
});

test("pieces and stems need a booking, of the farm or of the same upload", () => {
  const pieces = (client: string) => `${PIECES}${client},2027-06-12,Bridal bouquet,1\n`;
  expect(problemLines({ "bookings.csv": `${BOOKINGS}Ivy,2027-06-12,foxglove\n`, "pieces.csv": pieces("Ivi") })).toEqual(
    [
      'pieces.csv:2 client: no booking of "Ivi" on 2027-06-12: add it to the bookings sheet, or mend the client or the day; did you mean "Ivy" on 2027-06-12?',
    ],
  );
  const { records, problems } = read({ "pieces.csv": `${PIECES}ash & wren,2027-09-20,Bridal bouquet,2\n` });
  expect(problems).toEqual([]);
  expect(records.bookings).toMatchObject([{ id: 1, client: "Ash & Wren", pieces: [{ recipe: "Bridal bouquet" }] }]);
});

test("a booking with a wrong line is left out whole, and every row of it says why; others stand", () => {
  const { problems, records, rowCount, cleanRowCount } = read({
    "bookings.csv": `${BOOKINGS}Ivy,2027-06-12,\nSol,2027-06-13,Foxglove\n`,
    "pieces.csv": `${PIECES}Ivy,2027-06-12,Bridal bouquet,1\nIvy,2027-06-12,Bridal bucket,2\nSol,2027-06-13,Bridal bouquet,1\n`,
  });
  expect(problems.map(({ file, line, message }) => [file, line, message.split(/[:;]/)[0]])).toEqual([
    ["bookings.csv", 2, 'left out, since a line of the booking of "Ivy" has a problem'],
    ["pieces.csv", 2, 'left out, since a line of the booking of "Ivy" has a problem'],
    ["pieces.csv", 3, 'no recipe called "Bridal bucket"'],
  ]);
  expect(records.bookings).toMatchObject([{ client: "Sol", unacceptableCrops: ["Foxglove"], pieces: [{}] }]);
  expect([rowCount, cleanRowCount]).toEqual([5, 2]);
});

test("the rows of a recipe agree, and a recipe with a wrong line is left out whole", () => {
  const header = "recipe,unit,role,stems_per_piece\n";
  const good = read({ "recipes.csv": `${header}Posy,piece,focal,3\nArch,foot,foliage,6\nposy,piece,filler,0.5\n` });
  expect(good.records.recipes).toMatchObject([
    { name: "Posy", origin: "own", lines: [{ role: "focal" }, { role: "filler", stemsPerPiece: 0.5 }] },
    { name: "Arch", unit: "foot", lines: [{ role: "foliage", colours: "palette" }] },
  ]);
  expect(
    problemLines({ "recipes.csv": `${header}Posy,piece,focal,3\nPosy,foot,filler,2\nArch,foot,line,1\n` }),
  ).toEqual([
    'recipes.csv:2 row: left out, since another line of "Posy" has a problem: mend line 3 of recipes.csv first',
    'recipes.csv:3 unit: unit is "foot" here and "piece" on line 2 of recipes.csv: write the same for every line of "Posy"',
  ]);
});
