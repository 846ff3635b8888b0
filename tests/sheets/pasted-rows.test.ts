import { expect, test } from "vitest";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { readPastedRows } from "#lib/sheets/pasted-rows";
import { farm } from "../small-farm";

const KNOWN = { farm: farm(), recipes: ["Bridal bouquet", "Low centrepiece"], crops: ["Dahlia", "Foxglove"] };
const paste = (text: string) => readPastedRows(text, KNOWN);

test("rows of pieces and of stems are told apart by their first cell", () => {
  expect(
    paste("Low centrepiece\t12\tblush / cream\nbridal bouquet\t1\nfocal\t40\tplum\tdahlia\nFoliage\t60\n"),
  ).toEqual({
    pieces: [
      { recipe: "Low centrepiece", pieceCount: 12, colours: ["blush", "cream"] },
      { recipe: "Bridal bouquet", pieceCount: 1, colours: [] },
    ],
    stemLines: [
      { role: "focal", crop: "Dahlia", cropOnly: false, asks: [], colours: ["plum"], stemCount: 40 },
      { role: "foliage", crop: null, cropOnly: false, asks: [], colours: [], stemCount: 60 },
    ],
    problems: [],
    unread: "",
  });
});

test("a header row is passed over, and rows typed with commas or semicolons are read too", () => {
  const expected = paste("Bridal bouquet\t2\tblush / cream");
  for (const text of [
    "Piece\tCount\tColours\nBridal bouquet\t2\tblush / cream\t\n",
    "Bridal bouquet, 2, blush / cream",
    "recipe;count;colours\r\nBridal bouquet;2;blush, cream\r\n",
    'Bridal bouquet\t2\t"blush\t/ cream"',
  ])
    expect(paste(text)).toEqual(expected);
});

test("each wrong row is a problem of its line, with how to mend it, and is handed back as text", () => {
  const { problems, pieces, stemLines, unread } = paste(
    "Bridal bouquet\t1\n\nBridal bucket\t2\nfocal\tmany\tpinkish\nfocal\t10\t\tDalia\nBridal bouquet\t3\tblush\tcream\nLow centrepiece\n",
  );
  expect(problems.map(({ line, column, message }) => `${line} ${column}: ${message}`)).toEqual([
    `3 piece: no recipe called "Bridal bucket": add it to the farm's recipes or mend the name; did you mean "Bridal bouquet"? (or start with a role: focal, secondary, line, filler, foliage, accent)`,
    '4 stems: "many" is not a number: write digits alone, with a point for decimals, for example 12.5',
    expect.stringMatching(/^4 colours: "pinkish" is not known here: write one of white, /),
    `5 crop: no crop called "Dalia": add it to the farm's crops or mend the name; did you mean "Dahlia"?`,
    '6 null: "cream" is more than a row takes: write piece, count, colours, with several colours in one cell, parted by "/"',
    "7 count: count is empty: write a number, for example 12.5",
  ]);
  expect([pieces.length, stemLines.length]).toEqual([1, 0]);
  expect(unread).toBe(
    "Bridal bucket\t2\nfocal\tmany\tpinkish\nfocal\t10\t\tDalia\nBridal bouquet\t3\tblush\tcream\nLow centrepiece",
  );
});

test("limits are those of a booking: no piece below one part, no stems beyond ten thousand", () => {
  expect(paste("Bridal bouquet\t0\nfocal\t10001\n").problems.map(({ message }) => message)).toEqual([
    '"0" will not do here: more than 0; change it to fit',
    '"10001" will not do here: at most 10,000 stems; change it to fit',
  ]);
});

test("a row with a bad quote is a problem of its line, and the rows after it are read", () => {
  const { problems, pieces } = paste('Bridal bouquet\t"2\nLow centrepiece\t4\n');
  expect(problems.map(({ line }) => line)).toEqual([1]);
  expect(pieces).toEqual([{ recipe: "Low centrepiece", pieceCount: 4, colours: [] }]);
});

test("nothing pasted is nothing read", () => {
  expect(paste(" \n")).toEqual({ pieces: [], stemLines: [], problems: [], unread: "" });
});

test("a count of 1,5 pieces is refused on a farm that writes a decimal point, and read where it writes a comma", () => {
  const pasted = "Low centrepiece\t1,5\n";
  expect(paste(pasted).problems).toHaveLength(1);
  for (const text of [pasted, pasted.replace("\t", ";")]) {
    const read = readPastedRows(text, { ...KNOWN, farm: farm({ decimalMark: "comma" }) });
    expect(read.pieces).toEqual([{ recipe: "Low centrepiece", pieceCount: 1.5, colours: [] }]);
  }
});

const RECIPES = DEFAULT_RECIPES.map(({ name }) => name);
const pasteAtHome = (text: string) =>
  readPastedRows(text, { farm: farm(), recipes: RECIPES, crops: ["Dahlia", "Snapdragon", "Peony", "Cosmos"] });

test("pieces are found as the trade writes them: one or several, and by its other words", () => {
  const { pieces, problems } = pasteAtHome(
    "Bridesmaids\t5\nBridesmaids’ bouquets\t2\nBuds vases\t1\nbuttonholes\t9\nBoutonnières\t3\nLow centerpieces\t12\n" +
      "tall centre pieces\t2\nfull arches\t1\nFlower crowns\t2\n12\tCorsages\n5 x\tBride\nAisle markers\tx 20\n",
  );
  expect(problems).toEqual([]);
  expect(pieces.map(({ recipe, pieceCount }) => `${pieceCount} ${recipe}`)).toEqual([
    "5 Attendant bouquet",
    "2 Attendant bouquet",
    "1 Bud vase",
    "9 Boutonniere",
    "3 Boutonniere",
    "12 Low centrepiece",
    "2 Tall centrepiece",
    "1 Arch, full",
    "2 Flower crown",
    "12 Corsage",
    "5 Bridal bouquet",
    "20 Aisle marker",
  ]);
});

test("colours, roles and crops are found by the trade's other words for them", () => {
  const { pieces, stemLines, problems } = pasteAtHome(
    "Bride\t1\tivory, dusty rose & sage\ngreenery\t60\tOlive\nfocals\t40\tWine and lilac\tdahlias\nspikes\t20\t\tsnaps\naccents\t9\t\tPeonies\n",
  );
  expect(problems).toEqual([]);
  expect(pieces[0].colours).toEqual(["cream", "pink", "green"]);
  expect(stemLines.map(({ role, colours, crop }) => [role, colours, crop])).toEqual([
    ["foliage", ["green"], null],
    ["focal", ["burgundy", "lavender"], "Dahlia"],
    ["line", [], "Snapdragon"],
    ["accent", [], "Peony"],
  ]);
});

test("what could be two things is refused with both, and so is what no trade word says", () => {
  const { pieces, problems } = pasteAtHome("arch\t1\nBride\t1\tchampagne\nbouquet\t4\nfull\t1\nBridal toss\t1\n");
  expect(pieces).toEqual([]);
  expect(problems.map(({ message }) => message)).toEqual([
    '"arch" may be Arch, one-side spray or Arch, full: write the one that is meant (or start with a role: focal, secondary, line, filler, foliage, accent)',
    '"champagne" may be cream, blush or peach: write the one that is meant; or say on the Farm screen which colour it is to you',
    expect.stringMatching(/^no recipe called "bouquet"/),
    expect.stringMatching(/^no recipe called "full"/),
    expect.stringMatching(/^no recipe called "Bridal toss"/),
  ]);
});

test("a recipe that the farm named so goes before any other reading of the word", () => {
  const named = { farm: farm(), recipes: ["Greenery", "Bridesmaid", "Attendant bouquet"], crops: [] };
  expect(readPastedRows("greenery\t3\nbridesmaid\t2\n", named).pieces.map(({ recipe }) => recipe)).toEqual([
    "Greenery",
    "Bridesmaid",
  ]);
});
