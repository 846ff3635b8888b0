import { expect, test } from "vitest";
import { KNOWN, problemLines, read } from "./known-farm";

const BEDS = "bed,length_m,width_m\nD9,15,1.2\n";
const PLANTINGS = "bed,crop,variety,colour,season,treatment,planted_on,plants\n";

test("columns left out take the defaults that the sheet's text says", () => {
  const { records, problems, perSheet } = read({
    "beds.csv": BEDS,
    "plantings.csv": `${PLANTINGS}D9,Dahlia,Maple Row,,2027,field,2027-05-20,70\n`,
    "bookings.csv": "client,event_on\nIvy & Sol,2027-06-12\n",
    "stems.csv": "client,event_on,role,stems\nIvy & Sol,2027-06-12,focal,40\n",
    "promises.csv": "client,event_on,role,promised_stems\nIvy & Sol,2027-06-12,focal,38\n",
    "pieces.csv": "client,event_on,recipe,count\nIvy & Sol,2027-06-12,bridal bouquet,1\n",
    "cooler.csv": "crop,variety,cut_on,stems\nDahlia,Maple Row,2027-06-01,12\n",
  });
  expect(problems).toEqual([]);
  expect(records).toEqual({
    beds: [
      { name: "D9", lengthMetres: 15, widthMetres: 1.2, flags: [], noEntryFrom: null, noEntryUntil: null, note: "" },
    ],
    plantings: [
      {
        bed: "D9",
        crop: "Dahlia",
        variety: "Maple Row",
        colour: "plum",
        seasonYear: 2027,
        treatment: "field",
        plantedOn: "2027-05-20",
        plantCount: 70,
        aliveShare: 1,
        gradeOutShare: null,
        winterSurvivalShare: null,
        flags: [],
        ageSeasons: null,
        sown: false,
        daysLate: null,
        yieldFactor: null,
      },
    ],
    bookings: [
      {
        client: "Ivy & Sol",
        eventOn: "2027-06-12",
        status: "enquiry",
        lapsesAfter: null,
        palette: [],
        alternativeColours: [],
        unacceptableColours: [],
        ...{ leadDays: null, designDays: null, deliverDays: null },
        takenOn: null,
        priceCents: null,
        ...{ finalDueOn: null, finalOn: null, finalPieces: [], finalStems: null, askedBefore: [] },
        spareShare: KNOWN.farm.spareShare,
        unacceptableCrops: [],
        pieces: [{ recipe: "Bridal bouquet", pieceCount: 1, colours: [] }],
        stemLines: [{ role: "focal", crop: null, cropOnly: false, asks: [], colours: [], stemCount: 40 }],
        promises: [{ role: "focal", crop: null, cropOnly: false, asks: [], colours: [], stemCount: 38 }],
        note: "",
      },
    ],
    coolerStock: [{ crop: "Dahlia", variety: "Maple Row", colour: "plum", cutOn: "2027-06-01", stemCount: 12 }],
  });
  expect(perSheet.map(({ sheet, rowCount, cleanRowCount }) => [sheet, rowCount, cleanRowCount])).toEqual([
    ["beds", 1, 1],
    ["plantings", 1, 1],
    ["cooler", 1, 1],
    ["bookings", 1, 1],
    ["pieces", 1, 1],
    ["stems", 1, 1],
    ["promises", 1, 1],
  ]);
});

test("CRLF, LF, semicolons, tabs, a byte order mark, blank lines and another order of columns read the same", () => {
  const text = "bed,length_m,width_m,note\nD9,15,1.2,\nD10,20,1,near the gate\n";
  const { records } = read({ "beds.csv": text });
  expect(records.beds).toHaveLength(2);
  const variants = [
    text.replaceAll("\n", "\r\n"),
    text.replaceAll(",", ";"),
    text.replaceAll(",", "\t"),
    `\uFEFF${text}`,
    text.replaceAll("\n", "\n\n"),
    text.replace("bed,length_m,width_m", "Bed,Length M,WIDTH-M"),
    "note,width_m,bed,length_m\n,1.2,D9,15\nnear the gate,1,D10,20\n",
    text.replace(/[^,\n]+/g, '"$&"'),
    text.trimEnd(),
  ];
  for (const variant of variants) expect(read({ "beds.csv": variant }).records).toEqual(records);
});

test("in a thousand rows with three bad ones, exactly those three are listed", () => {
  const rows = Array.from({ length: 1000 }, (_, index) => `D${index + 100},15,1.2`);
  rows[99] = "D199,long,1.2";
  rows[499] = "D599,15";
  rows[999] = "D1099,15,0";
  const { problems, records, rowCount, cleanRowCount } = read({
    "beds.csv": `bed,length_m,width_m\n${rows.join("\n")}\n`,
  });
  expect(problems.map(({ line }) => line)).toEqual([101, 501, 1001]);
  expect(records.beds).toHaveLength(997);
  expect([rowCount, cleanRowCount]).toEqual([1000, 997]);
});

test("all that is wrong in a row is said at once, cell by cell", () => {
  expect(
    problemLines({
      "plantings.csv": `${PLANTINGS.trim()},alive_share\nD8,Dahlia,Maple Row,blush,1066,feild,2027-02-29,-4,2\n`,
    }),
  ).toEqual([
    'plantings.csv:2 season: "1066" will not do here: a year from 1990; change it to fit',
    'plantings.csv:2 treatment: "feild" is not known here: write one of field, spring-planted, kept-in-ground, autumn-planted, tunnel; did you mean "field"?',
    'plantings.csv:2 planted_on: "2027-02-29" will not do here: not a calendar day: write it as YYYY-MM-DD, for example 2027-06-12',
    'plantings.csv:2 plants: "-4" will not do here: plants cannot be negative; change it to fit',
    'plantings.csv:2 alive_share: "2" will not do here: a share from 0 to 1; change it to fit',
  ]);
});

test("rules between two cells of a row are kept: sprays have both days, curves one anchor, crop_only a crop", () => {
  const found = problemLines({
    "beds.csv":
      "bed,length_m,width_m,no_entry_from,no_entry_until\nD9,1,1,2027-06-01,\nD10,1,1,2027-06-02,2027-06-01\n",
    "curves.csv":
      "crop,treatment,first_cut,days_after_planting,stems_per_plant_by_week,first_cut_spread_days,yield_spread\n" +
      "Dahlia,field,,,1 / 2,5,0.2\nDahlia,tunnel,06-01,90,1 / 2,5,0.2\n",
    "bookings.csv": "client,event_on\nIvy,2027-06-12\n",
    "stems.csv": "client,event_on,role,crop_only,stems\nIvy,2027-06-12,focal,yes,40\n",
  });
  expect(found.map((problem) => problem.split(": ").slice(0, 2).join(": "))).toEqual([
    "beds.csv:2 no_entry_until: no_entry_from and no_entry_until do not go together",
    "beds.csv:3 no_entry_until: no_entry_from and no_entry_until do not go together",
    "curves.csv:2 first_cut: first_cut and days_after_planting",
    "curves.csv:3 first_cut: first_cut and days_after_planting",
    'bookings.csv:2 row: left out, since a line of the booking of "Ivy" has a problem',
    "stems.csv:2 crop: crop_only is yes, and the crop is empty",
  ]);
});

test("letters lost to another encoding are a problem, not a name", () => {
  expect(problemLines({ "beds.csv": "bed,length_m,width_m\nCaf\uFFFD,1,1\n" })).toEqual([
    'beds.csv:2 bed: letters were lost in "Caf\uFFFD": save the sheet as CSV in UTF-8 and bring it again',
  ]);
});

test("no files, and files with a header alone, bring nothing and no problem", () => {
  expect(read({})).toMatchObject({ records: {}, problems: [], rowCount: 0, cleanRowCount: 0, perSheet: [] });
  expect(read({ "beds.csv": "bed,length_m,width_m\n" })).toMatchObject({ records: {}, problems: [], rowCount: 0 });
});
