import { expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { noteParts } from "#lib/plan/words/note-words";

const NOTE = "Flowers develop faster from 10 up to 25 °C (BRONDUM); the base is from memory.";
const textOf = (note: string, units: "us" | "metric") =>
  noteParts(note, units)
    .map((part) => (typeof part === "string" ? part : "[source]"))
    .join("");

test("a note names its source by the source itself, and its degrees in the farm's units", () => {
  expect(noteParts(NOTE, "metric")).toEqual([
    "Flowers develop faster from 10 up to 25 °C ",
    SOURCES.BRONDUM,
    "; the base is from memory.",
  ]);
  expect(textOf(NOTE, "us")).toBe("Flowers develop faster from 50 up to 77 °F [source]; the base is from memory.");
  expect(textOf("It stops near 80 F (USU-ANEM).", "metric")).toBe("It stops near 27 °C [source].");
});

test("a grower's own note stays as she wrote it, brackets and degrees too", () => {
  const own = "Covered below 28 F (TARP), 25 °C in the tunnel";
  expect(noteParts(own, "us")).toEqual([own]);
  expect(noteParts(own, "metric")).toEqual([own]);
});

test("no note of the catalogue shows the id of a source, and each keeps its other words", () => {
  const notes = CATALOGUE.flatMap(({ curves }) => curves.map(({ note }) => note)).filter((note) => note !== "");
  expect(notes.length).toBeGreaterThan(20);
  for (const note of notes) {
    const words = noteParts(note, "metric").filter((part) => typeof part === "string");
    for (const id of Object.keys(SOURCES)) expect(words.join("")).not.toContain(`(${id})`);
    expect(textOf(note, "us")).not.toMatch(/°C/);
    expect(textOf(note, "metric")).not.toMatch(/\d °?F\b/);
  }
});
