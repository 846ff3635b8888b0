import { expect, test } from "vitest";
import type { AnswerLine } from "../../app/enquiry/answer/answer-lines";
import type { AnswerView } from "../../app/enquiry/answer/answer-view";
import type { Rung } from "../../app/enquiry/answer/rungs";
import { NOTHING, withLine } from "../../app/enquiry/answer-state";
import { day } from "../small-farm";

const answer = (head: string): AnswerLine => ({
  answer: { head } as AnswerView,
  sentence: `${head}, so far`,
  weekdays: [day("2027-06-12")],
});
const rung = (title: string): AnswerLine => ({ rung: { title } as Rung });
const otherDay: AnswerLine = {
  otherDay: { day: day("2027-06-19"), promisedStems: 1, likelyStems: 2, colours: [], booked: [] },
};
const titles = (lines: readonly AnswerLine[], before = NOTHING) =>
  lines.reduce(withLine, before).offered?.rungs.map(({ title }) => title);
const whole = [answer("Partly"), rung("pink"), { sentence: "Partly, or pink" }, otherDay, { done: true } as const];

test("the first answer is shown as it comes, line by line", () => {
  expect(titles([answer("Partly"), rung("pink")])).toEqual(["pink"]);
  const { sentence, days, isDone } = whole.reduce(withLine, NOTHING);
  expect([sentence, days?.otherDays.length, isDone]).toEqual(["Partly, or pink", 1, true]);
});

test("of a newer question the answer is shown at once, and what could be done and other days stay until theirs are whole", () => {
  const before = whole.reduce(withLine, NOTHING);
  const asked = [answer("Yes"), rung("peach")].reduce(withLine, before);
  expect([asked.view?.head, asked.offered?.view.head, asked.days?.view.head]).toEqual(["Yes", "Partly", "Partly"]);
  const offered = withLine(asked, { sentence: "Yes, or peach" });
  expect([offered.offered?.rungs.map(({ title }) => title), offered.days?.otherDays.length]).toEqual([["peach"], 1]);
  const done = [otherDay, otherDay, { done: true } as const].reduce(withLine, offered);
  expect([done.days?.view.head, done.days?.otherDays.length, done.comingDays]).toEqual(["Yes", 2, null]);
});

test("a page that came with the answer and what could be done shows other days as they come", () => {
  const page = [answer("Partly"), rung("pink"), { sentence: "" }].reduce(withLine, NOTHING);
  const again = [answer("Partly"), rung("pink"), otherDay].reduce(withLine, page);
  expect([again.offered?.rungs.length, again.days?.otherDays.length, again.comingDays]).toEqual([1, 1, null]);
});

test("a question that is broken off leaves nothing of itself in the next", () => {
  const before = whole.reduce(withLine, NOTHING);
  const brokenOff = [answer("Yes"), rung("peach")].reduce(withLine, before);
  expect(titles([answer("None"), rung("red"), { sentence: "" }], brokenOff)).toEqual(["red"]);
});

test("what is wrong with a question leaves the answer before it, and a day that cannot be asked leaves none", () => {
  const before = whole.reduce(withLine, NOTHING);
  expect(withLine(before, { problems: [{ place: "stemCount", message: "whole" }] }).view?.head).toBe("Partly");
  expect(withLine(before, { unanswerable: "past", eventOn: day("2020-06-12") })).toMatchObject({ view: null });
});
