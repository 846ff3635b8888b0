import type { Day } from "#lib/domain/day";
import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/worksheet";
import { countOf, inTenths } from "#lib/plan/words/numbers";
import { sumOfTakes, takesInWords } from "#lib/plan/words/takes-words";
import { taskInWords, taskWords } from "#lib/plan/words/task-words";
import { TaskTable } from "./task-table";

type Props = { title: string; day: Day; tasks: readonly WinterTask[]; units: Units };

/** One day of the winter's work: what several beds share under its own heading, then what each has for itself. */
export function WorkDay({ title, day, tasks, units }: Props) {
  const hours = tasks.reduce((sum, task) => sum + task.hours, 0);
  const takes = takesInWords(sumOfTakes(tasks), units);
  const byWords = new Map<string, WinterTask[]>();
  for (const task of tasks) {
    const words = taskInWords(task);
    byWords.set(words, [...(byWords.get(words) ?? []), task]);
  }
  const shared = [...byWords].filter(([, beds]) => beds.length > 1);
  const single = [...byWords.values()].flatMap((beds) =>
    beds.length === 1 ? [{ task: beds[0], ...taskWords(beds[0]) }] : [],
  );
  const notes = [...new Set(single.flatMap(({ how }) => how || []))];
  return (
    <section className="work-sheet" aria-labelledby={`day-${day}`}>
      <h2 id={`day-${day}`}>{title}</h2>
      <p>
        {countOf(new Set(tasks.map(({ bedId }) => bedId)).size, "bed")}
        {hours > 0 && `, about ${inTenths(hours)} hours`}
        {takes && `, ${takes}`}
      </p>
      {shared.map(([words, beds]) => (
        <div key={words}>
          <h3>{words}</h3>
          <TaskTable rows={beds.map((task) => ({ task, what: null }))} units={units} words={words} />
        </div>
      ))}
      {single.length > 0 && (
        <>
          {notes.length > 0 && <h3>{notes.join(" ")}</h3>}
          <TaskTable rows={single} units={units} words="Bed by bed" />
        </>
      )}
    </section>
  );
}
