import { readFileSync, statSync } from "node:fs";
import { expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { undoChange } from "#db/journal/journal";
import { updateBed } from "#db/write/beds";
import { importRecords } from "#db/write/records";
import { bed, newBed } from "../small-farm";
import { bedsIn, makeFile, withFolder } from "./farm-in-file";
import { changeOf, done } from "./kept-farm";

test("a big import that was undone gives its room back, once it has left the history", () =>
  withFolder((file) => {
    makeFile(file);
    const before = statSync(file).size;
    const database = openFarm(file);
    const beds = Array.from({ length: 8000 }, (_, row) => ({ ...newBed(`I${row}`), note: "x".repeat(100) }));
    const imported = changeOf(importRecords(database, { beds }));
    expect(undoChange(database, imported).ok).toBe(true);
    for (let count = 0; count < 200; count++) done(updateBed(database, 1, bed({ id: 1, name: `R${count}` })));
    closeFarm(database);
    expect(statSync(file).size).toBeGreaterThan(4 * before);
    closeFarm(openFarm(file));
    expect(statSync(file).size).toBeLessThan(2 * before);
    expect(readFileSync(file).readUInt32BE(28) * 4096).toBe(statSync(file).size);
    expect(bedsIn(file)).toEqual(["R199", "D2"]);
  }));
