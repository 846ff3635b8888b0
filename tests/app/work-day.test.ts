import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { inTenths } from "#lib/plan/words/numbers";
import { worksheetOf } from "../../app/keep-or-dig/worksheet/load-worksheet";
import { WorkDay } from "../../app/keep-or-dig/worksheet/work-day";
import { day } from "../small-farm";

const farm = seededFarm(1, TYPICAL);
const { tasks } = worksheetOf(farm, 2027, day("2026-10-01"));
const [first] = tasks.filter(({ hours }) => hours > 0);
const ofDay = tasks.filter((task) => task.day === first.day);
const shown = (isElsewhere: boolean) =>
  renderToStaticMarkup(
    createElement(WorkDay, {
      title: "The day",
      day: first.day,
      tasks: ofDay,
      units: farm.farm.units,
      isOpen: true,
      isAlone: false,
      isElsewhere,
    }),
  );

test("a day of the winter's work has a row for each task; one whose rows stand elsewhere has the same sum and the way there", () => {
  expect(ofDay.length).toBeGreaterThan(1);
  const whole = shown(false);
  expect(whole.split('<th scope="row">').length - 1).toBe(ofDay.length);
  const sum = `about ${inTenths(ofDay.reduce((hours, task) => hours + task.hours, 0))} hours`;
  expect(whole).toContain(sum);
  const elsewhere = shown(true);
  expect(elsewhere).toContain(sum);
  expect(elsewhere).toContain(`href="/keep-or-dig/worksheet?day=${first.day}"`);
  expect(elsewhere).not.toContain("<tr");
});
