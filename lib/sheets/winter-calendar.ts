import ical from "ical-generator";
import type { Day } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { WinterTask } from "#lib/plan/winter/spread-work";
import type { WinterWorksheet } from "#lib/plan/winter/worksheet";
import { takesInWords } from "#lib/plan/words/takes-words";
import { taskInWords } from "#lib/plan/words/task-words";

/**
 * The winter's work as an iCalendar file (RFC 5545): an all-day event for each day with work, with every bed's task in its description. The
 * same worksheet gives the same file; an event keeps its UID, so that a calendar that reads the file again does not double it.
 * @param stamp  when the file was made, as "YYYY-MM-DDThh:mm:ssZ"
 */
export function winterCalendar(
  { tasks }: WinterWorksheet,
  { name, units }: Pick<Farm, "name" | "units">,
  seasonYear: number,
  stamp: string,
): string {
  const calendar = ical({
    name: `${name}, winter before ${seasonYear}`,
    prodId: { company: "Stems and Saturdays", product: "Winter", language: "EN" },
  });
  const byDay = new Map<Day, WinterTask[]>();
  for (const task of tasks) byDay.set(task.day, [...(byDay.get(task.day) ?? []), task]);
  for (const [day, ofDay] of byDay) {
    const bedCount = new Set(ofDay.map(({ bedId }) => bedId)).size;
    const hours = ofDay.reduce((sum, task) => sum + task.hours, 0);
    calendar.createEvent({
      id: `winter-${seasonYear}-${day}@stems-and-saturdays.invalid`,
      start: day,
      allDay: true,
      stamp,
      summary: `Winter work: ${bedCount} ${bedCount === 1 ? "bed" : "beds"}${hours > 0 ? `, ${hours.toFixed(1)} hours` : ""}`,
      description: ofDay.map((task) => lineOf(task, units)).join("\n"),
    });
  }
  return calendar.toString();
}

/** "D4 (kept): Leaves on, … 4.7 cubic yards of leaves." */
function lineOf(task: WinterTask, units: Farm["units"]): string {
  const takes = takesInWords(task, units);
  return `${task.bedName} (${task.fate}): ${taskInWords(task)}${takes && ` ${takes}.`}`;
}
