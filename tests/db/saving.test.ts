import { describe, expect, test } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { landedBefore, latestChanges, revision, undoChange } from "#db/journal/journal";
import { SaveRefused, type Saving, saving } from "#db/journal/saving";
import { addBed, updateBed } from "#db/write/beds";
import { addBooking, updateBooking } from "#db/write/bookings";
import { updateFarm } from "#db/write/farm";
import { updatePlanting } from "#db/write/plantings";
import { bed, booking, focal } from "../small-farm";
import { makeFile, withFolder } from "./farm-in-file";
import { changeOf, done, kept, withFarm } from "./kept-farm";

const sent = (parts: Partial<Saving> = {}): Saving => ({
  key: null,
  fingerprint: "same",
  seenRevision: null,
  ...parts,
});
const refusedWords = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (error instanceof SaveRefused) return error.message;
    throw error;
  }
  return "";
};
const rename = (database: FarmDatabase, name: string, save: Saving) =>
  saving(database, save, () => updateBed(database, 1, bed({ id: 1, name })));

describe("a save that is sent twice because no answer came", () => {
  test("is written once, and the second try is answered as the first was", () =>
    withFarm((database) => {
      const add = () => saving(database, sent({ key: "k1" }), () => addBed(database, bed({ id: 0, name: "E1" })));
      const first = add();
      const reached = revision(database);
      expect(add()).toEqual(first);
      expect(revision(database)).toBe(reached);
      expect(kept(database).beds.filter(({ name }) => name === "E1")).toHaveLength(1);
    }));

  test("is known to another server on the same file", () =>
    withFolder((file) => {
      makeFile(file);
      const [one, other] = [openFarm(file), openFarm(file)];
      const add = (database: FarmDatabase) =>
        saving(database, sent({ key: "k1" }), () => addBooking(database, booking({ id: 9, client: "Nine" })));
      expect(add(other)).toEqual(add(one));
      expect(kept(one).bookings.filter(({ client }) => client === "Nine")).toHaveLength(1);
      closeFarm(one);
      closeFarm(other);
    }));

  test("is told by its title before its content is read again, and an undo sent twice takes back once", () =>
    withFarm((database) => {
      const save = sent({ key: "k1" });
      expect(landedBefore(database, save)).toBe(null);
      const added = changeOf(saving(database, save, () => addBed(database, bed({ id: 0, name: "E1" }))));
      expect(landedBefore(database, save)).toBe("added bed E1");
      expect(() => landedBefore(database, { ...save, fingerprint: "other" })).toThrow(SaveRefused);
      const takeBack = () => saving(database, sent({ key: "u1" }), () => undoChange(database, added));
      const first = takeBack();
      expect(first.ok).toBe(true);
      expect(takeBack()).toEqual(first);
      expect(kept(database).beds.map(({ name }) => name)).toEqual(["D1", "D2"]);
    }));

  test("with another content is refused, and says that the first landed", () =>
    withFarm((database) => {
      done(rename(database, "E1", sent({ key: "k1" })));
      expect(refusedWords(() => rename(database, "E2", sent({ key: "k1", fingerprint: "other" })))).toContain(
        "saved after all",
      );
      expect(kept(database).beds[0].name).toBe("E1");
    }));

  test("that was refused or failed has no key: its second try is written", () =>
    withFarm((database) => {
      const twice = () => saving(database, sent({ key: "k1" }), () => addBed(database, bed({ id: 0, name: "D2" })));
      expect(twice().ok).toBe(false);
      done(rename(database, "E1", sent({ key: "k1" })));
      expect(kept(database).beds[0].name).toBe("E1");
    }));

  test("is forgotten after a thousand changes, so that the file does not grow with every save", () =>
    withFarm((database) => {
      for (let count = 0; count < 1010; count++) done(rename(database, `R${count}`, sent({ key: `k${count}` })));
      expect(database.$client.prepare("SELECT count(*) FROM save_key").pluck().get()).toBe(1000);
    }));
});

describe("a save over what somebody else has saved since the page was made", () => {
  test("is refused with both told, and nothing is overwritten", () =>
    withFarm((database) => {
      const seenRevision = revision(database);
      done(updateBed(database, 1, bed({ id: 1, name: "Theirs" })));
      const words = refusedWords(() => rename(database, "Mine", sent({ seenRevision })));
      expect(words).toContain("“changed bed Theirs”");
      expect(words).toContain("Name was “D1” and is now “Theirs”");
      expect(kept(database).beds[0].name).toBe("Theirs");
    }));

  test("is told by the labels and in the units of the farm, never by columns: 15 metres are 49.2 feet, and bed 2 is D2", () =>
    withFarm((database) => {
      const seenRevision = revision(database);
      done(updateBed(database, 1, bed({ id: 1, name: "D1", lengthMetres: 10, flags: ["wet soil", "vole damage"] })));
      expect(refusedWords(() => rename(database, "Mine", sent({ seenRevision })))).toContain(
        "Length was 49.2 feet and is now 32.8 feet, Reasons of the ground to dig over winter was empty and is now “wet soil, vole damage”",
      );
      const before = revision(database);
      const change = { ...kept(database).plantings[0], bedId: 2, aliveShare: 0.5, treatment: "tunnel" as const };
      done(updatePlanting(database, 1, change));
      const mine = () =>
        saving(database, sent({ seenRevision: before }), () =>
          updatePlanting(database, 1, { ...change, plantCount: 7 }),
        );
      const words = refusedWords(mine);
      expect(words).toContain("Bed was “D1” and is now “D2”");
      expect(words).toContain("Alive at first cut was 100 % and is now 50 %");
      expect(words).not.toMatch(/_id|_share|kept-in-ground/);
      expect(updateFarm(database, { ...kept(database).farm, units: "metric", decimalMark: "comma" }).ok).toBe(true);
      const seenInMetres = revision(database);
      done(updateBed(database, 2, bed({ id: 2, name: "D2", widthMetres: 1.25 })));
      const wider = () =>
        saving(database, sent({ seenRevision: seenInMetres }), () =>
          updateBed(database, 2, bed({ id: 2, name: "E2" })),
        );
      expect(refusedWords(wider)).toContain("Width was 1,2 metres and is now 1,25 metres");
    }));

  test("is written once the page has been made again", () =>
    withFarm((database) => {
      done(updateBed(database, 1, bed({ id: 1, name: "Theirs" })));
      done(rename(database, "Mine", sent({ seenRevision: revision(database) })));
      expect(kept(database).beds[0].name).toBe("Mine");
    }));

  test("is no matter when other rows were changed, or when both say the same", () =>
    withFarm((database) => {
      const seenRevision = revision(database);
      done(updateBed(database, 2, bed({ id: 2, name: "Other" })));
      done(rename(database, "Mine", sent({ seenRevision })));
      done(rename(database, "Mine", sent({ seenRevision })));
      expect(kept(database).beds.map(({ name }) => name)).toEqual(["Mine", "Other"]);
    }));

  test("is noticed in the lines of a booking too, and after an undo", () =>
    withFarm((database) => {
      const seenRevision = revision(database);
      const theirs = changeOf(updateBooking(database, 2, booking({ id: 2, status: "held", stemLines: focal(7) })));
      const mine = (seen: number) => () =>
        saving(database, sent({ seenRevision: seen }), () =>
          updateBooking(database, 2, booking({ id: 2, status: "held", stemLines: focal(9) })),
        );
      expect(refusedWords(mine(seenRevision))).toContain("booking stem line");
      const before = revision(database);
      expect(undoChange(database, theirs).ok).toBe(true);
      expect(refusedWords(mine(before))).toContain("took back");
    }));

  test("cannot be told from a page older than the journal, and is refused", () =>
    withFarm((database) => {
      const seenRevision = revision(database);
      for (let count = 0; count < 201; count++) done(updateBed(database, 2, bed({ id: 2, name: `R${count}` })));
      expect(latestChanges(database, 300)).toHaveLength(200);
      expect(refusedWords(() => rename(database, "Mine", sent({ seenRevision })))).toContain("no longer listed");
      expect(refusedWords(() => rename(database, "Mine", sent({ seenRevision: 9_999 })))).toContain(
        "copy was put back",
      );
    }));
});
