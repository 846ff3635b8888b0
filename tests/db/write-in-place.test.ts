import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { importRecords } from "#db/write/records";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { farmRecordsOf } from "#lib/sheets/farm-records-of";
import { farmSheets } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { newBed } from "../small-farm";
import { changeOf, done, kept, refused, withFarm } from "./kept-farm";

test("a record with an id takes the place of that one, and is refused when there is none", () => {
  withFarm((database) => {
    const before = kept(database);
    const records = farmRecordsOf(before);
    const planted = records.plantings[0];
    const booked = records.bookings[0];
    const written = done(
      importRecords(database, {
        varieties: [{ id: 1, crop: "Crop 1", variety: "Renamed", colour: "white", ...AS_ITS_CROP, headSize: "large" }],
        beds: [{ ...newBed("North"), id: 1 }],
        plantings: [{ ...planted, id: 1, variety: "Renamed", colour: "white", bed: "North", plantCount: 5 }],
        bookings: [{ ...booked, id: 1, client: "Moved", pieces: [], stemLines: [] }],
      }),
    );
    expect(written.title).toBe("changed 1 variety, 1 bed, 1 planting, 1 booking");
    const after = kept(database);
    expect([after.beds.length, after.plantings.length, after.bookings.length]).toEqual([
      before.beds.length,
      before.plantings.length,
      before.bookings.length,
    ]);
    expect(after.varieties[0]).toMatchObject({ id: 1, name: "Renamed", colour: "white", headSize: "large" });
    expect(after.beds[0]).toMatchObject({ id: 1, name: "North" });
    expect(after.plantings[0]).toMatchObject({ id: 1, bedId: 1, varietyId: 1, plantCount: 5 });
    expect(after.bookings[0]).toMatchObject({ id: 1, client: "Moved", pieces: [] });
    expect(refused(importRecords(database, { beds: [{ ...newBed("X"), id: 99 }] }))).toEqual([
      "beds[0].id: this bed is not on the farm",
    ]);
  });
});

test("a sheet that went out, was changed and came back changes those rows as one change, which one undo takes back", () => {
  withFarm((database) => {
    const before = kept(database);
    const files = farmSheets(before).map(({ name, text }) => ({
      name,
      text: name === "beds.csv" ? text.replace("D1,", "North,").replace("D2,", "South,") : text,
    }));
    const { records, problems } = readFarmSheets(files, knownFarm(before));
    expect(problems).toEqual([]);
    const change = changeOf(importRecords(database, records));
    expect(
      kept(database)
        .beds.map(({ id, name }) => [id, name])
        .slice(0, 2),
    ).toEqual([
      [1, "North"],
      [2, "South"],
    ]);
    expect({ ...kept(database), beds: before.beds }).toEqual(before);
    const beds = files.filter(({ name }) => name === "beds.csv");
    const again = readFarmSheets(beds, knownFarm(kept(database)));
    expect([again.problems, again.records]).toEqual([[], {}]);
    expect(undoChange(database, change).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});
