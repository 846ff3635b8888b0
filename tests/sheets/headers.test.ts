import { expect, test } from "vitest";
import { climateColumns } from "#lib/domain/records/climate";
import { FARM_SETTINGS } from "#lib/domain/records/farm-settings";
import { headingsOf, SHEET_NAMES } from "#lib/domain/records/sheets";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { sheetOfFile } from "#lib/sheets/sheet-of-file";
import { FARM, KNOWN, problemLines, read } from "./known-farm";

test("every sheet is known by its header, whatever the file is called", () => {
  for (const sheet of SHEET_NAMES) expect(sheetOfFile("export (3).csv", headingsOf(sheet))).toBe(sheet);
  expect(sheetOfFile("beds.csv", ["Client", "Event on", "Recipe", "Count"])).toBe("pieces");
});

test("when no header fits, the file's name decides, and then the most columns known", () => {
  expect(sheetOfFile("2027/Beds 2027.CSV", ["name", "length"])).toBe("beds");
  expect(sheetOfFile("sheet1.csv", ["bed", "length_m", "wide"])).toBe("beds");
  expect(sheetOfFile("sheet1.csv", ["one", "two"])).toBeNull();
});

test("an extra column is a problem that names the nearest, said once; the rows are read all the same", () => {
  const sheets = { "beds.csv": "bed,lenght_m,length_m,width_m,falgs,colour\nD9,1,15,1.2,,\nD10,1,15,1.2,,\n" };
  expect(problemLines(sheets)).toEqual([
    'beds.csv:1 lenght_m: the beds sheet has no column "lenght_m": take it out, or name it as one of bed, length_m, width_m, flags, no_entry_from, no_entry_until, note',
    'beds.csv:1 falgs: the beds sheet has no column "falgs": take it out; did you mean "flags"?',
    'beds.csv:1 colour: the beds sheet has no column "colour": take it out, or name it as one of bed, length_m, width_m, flags, no_entry_from, no_entry_until, note',
  ]);
  expect(read(sheets).cleanRowCount).toBe(2);
});

test("a column that is missing is said once, at the header, and the other cells are still read", () => {
  expect(problemLines({ "beds.csv": "\nbed,length_m\nD9,15\nD10,long\n" })).toEqual([
    'beds.csv:2 width_m: the beds sheet needs a column "width_m": add it, with a number, for example 12.5',
    'beds.csv:4 length_m: "long" is not a number: write digits alone, with a point for decimals, for example 12.5',
  ]);
});

test("a column that stands twice, one without a name, and a file that is no sheet are problems", () => {
  expect(problemLines({ "beds.csv": "bed,bed,length_m,width_m,\nD9,D10,15,1.2,x\n" })).toEqual([
    'beds.csv:1 bed: the column "bed" stands twice: only the first was read, take one out',
    "beds.csv:1 row: column 5 has no name: name it, or take it out of the sheet",
  ]);
  expect(problemLines({ "list.csv": "one,two\n1,2\n", "empty.csv": "" }).map((text) => text.split(":")[2])).toEqual([
    " no sheet has these columns",
    " the sheet is empty",
  ]);
});

test("settings that are given overrule the farm's, the others stay", () => {
  const { records, problems } = read({
    "farm.csv":
      'setting,value\nname,"Lark, Fen & Co"\nis_invented,yes\npicking_weekdays,Mon / Wed / Thu / Sat\nlead_days,3\nspare_share,0.15\nhours_at_hand,\nFrost first autumn P10,10-01\nweight_held,0.7\nwage_cents_per_hour,2350\n',
  });
  expect(problems).toEqual([]);
  expect(records.farm).toEqual({
    ...KNOWN.farm,
    name: "Lark, Fen & Co",
    isInvented: true,
    pickingWeekdays: [1, 3, 4, 6],
    leadDays: 3,
    spareShare: 0.15,
    frost: { ...KNOWN.farm.frost, firstAutumnP10: "10-01" },
    statusWeights: { ...KNOWN.farm.statusWeights, held: 0.7 },
    winter: { ...KNOWN.farm.winter, wageCentsPerHour: 2350, hoursAtHand: null },
  });
});

test("[M12] event days of a booking are read, and refused in the row where they cannot be", () => {
  const sheets = {
    "bookings.csv":
      "client,event_on,last_cut_days_before,design_days_before,delivery_days_before\nIvy,2027-06-12,4,,2\nFern,2027-06-12,1,,2\n",
  };
  const days = read(sheets).records.bookings?.map((row) => [row.leadDays, row.designDays, row.deliverDays]);
  expect(days).toEqual([[4, null, 2]]);
  expect(problemLines(sheets)).toEqual([
    "bookings.csv:3 last_cut_days_before: the last cut is after the delivery: choose an earlier cut or a later delivery",
  ]);
});

test("[M12] a habit out of order is refused in all its rows, whichever of the days the farm has already", () => {
  const sheets = { "farm.csv": "setting,value\ndelivery_days_before,3\nzone,8b\n" };
  expect(problemLines(sheets)).toEqual([
    "farm.csv:2 value: delivery_days_before does not go with the others of its kind: the design is after the delivery: choose an earlier design day or a later delivery",
  ]);
  expect(read(sheets).records.farm?.zone).toBe("8b");
});

test("a booking without its own spare takes that of the farm sheet beside it", () => {
  const { records } = read({
    "farm.csv": "setting,value\nspare_share,0.25\n",
    "bookings.csv": "client,event_on\nIvy,2027-06-12\n",
  });
  expect(records.bookings?.[0]?.spareShare).toBe(0.25);
});

test("wrong settings are problems of their rows; the clean ones still count", () => {
  const sheets = {
    "farm.csv":
      "setting,value\nlead_day,3\nlead_days,soon\nspare_share,2\nzone,8b\nunits,\nfrost_first_autumn_p10,11-20\nzone,9a\n",
  };
  expect(problemLines(sheets)).toEqual([
    'farm.csv:2 setting: no setting called "lead_day": take the row out; did you mean "lead_days"?',
    'farm.csv:3 value: "soon" is not a number: write digits alone, with a point for decimals, for example 12.5',
    'farm.csv:4 value: "2" will not do here: a share from 0 to 1; change it to fit',
    "farm.csv:6 value: units is empty: write one of: us, metric, or take the row out to keep the farm's value",
    "farm.csv:7 value: frost_first_autumn_p10 does not go with the others of its kind: autumn frost dates must come in order: 10 % first, 90 % last",
    "farm.csv:8 setting: zone stands on line 5 of farm.csv already: keep one of the two rows",
  ]);
  expect(read(sheets).records.farm).toEqual({ ...KNOWN.farm, zone: "8b" });
});

test("the farm sheet has a row for every setting of the farm, each name once", () => {
  const rows = farmSheets(FARM)[0]?.text.split("\r\n").slice(1, -1) ?? [];
  expect(rows.map((row) => row.split(",")[0])).toEqual(FARM_SETTINGS.map(({ heading }) => heading));
  expect(new Set(FARM_SETTINGS.map(({ heading }) => heading)).size).toBe(FARM_SETTINGS.length);
  const settingCount = Object.values({ ...KNOWN.farm, climate: climateColumns(null) })
    .map((field) =>
      field !== null && typeof field === "object" && !Array.isArray(field) ? Object.keys(field).length : 1,
    )
    .reduce((sum, count) => sum + count, 0);
  expect(FARM_SETTINGS).toHaveLength(settingCount);
});

test("colour names of the farm's own are read as ours, also those that the upload itself brings", () => {
  const varieties = "crop,variety,colour\nDahlia,Rosa,antique rose\nDahlia,Nix,ivory\n";
  const own = 'setting,value\nown_colours,"Antique Rose = pink / ivory = white"\n';
  expect(read({ "varieties.csv": varieties, "farm.csv": own }).records.varieties?.map(({ colour }) => colour)).toEqual([
    "pink",
    "white",
  ]);
  expect(problemLines({ "varieties.csv": varieties })).toEqual([
    expect.stringMatching(/^varieties.csv:2 colour: "antique rose" is not known here: write one of white, /),
  ]);
});

test("a colour name of the farm's own is not one of ours, stands once, and names one of ours", () => {
  const problem = (value: string) => problemLines({ "farm.csv": `setting,value\nown_colours,${value}\n` });
  expect(problem("moss = green / Moss = silver")).toEqual([expect.stringMatching(/stands twice/)]);
  expect(problem("white = cream")).toEqual([expect.stringMatching(/one of ours already/)]);
  expect(problem("moss = mossy")).toEqual([expect.stringMatching(/"mossy" is not known here/)]);
  expect(problem("moss")).toEqual([expect.stringMatching(/write it with ours, for example/)]);
});
