import type { Day } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Units } from "#lib/domain/words";
import type { WinterTask } from "#lib/plan/winter/spread-work";
import { countOf, hoursInWords } from "#lib/plan/words/numbers";
import { sumOfTakes, takesInWords } from "#lib/plan/words/takes-words";
import { taskInWords, taskWords } from "#lib/plan/words/task-words";
import { TaskTable } from "./task-table";

type Props = {
  title: string;
  day: Day;
  tasks: readonly WinterTask[];
  units: Units;
  isOpen: boolean;
  isAlone: boolean;
  /** Its rows stand on a page of their own: only its sum is here, and the way there. */
  isElsewhere?: boolean;
};

/** One day of the winter's work, folded under its sum: what several beds share under its own heading, then what each has for itself. */
export function WorkDay({ title, day, tasks, units, isOpen, isAlone, isElsewhere }: Props) {
  const hours = tasks.reduce((sum, task) => sum + task.hours, 0);
  const takes = takesInWords(sumOfTakes(tasks), units);
  const sum = (
    <span className="soft">
      {countOf(new Set(tasks.map(({ bedId }) => bedId)).size, "bed")}: {allOf(new Set(tasks.map(({ work }) => work)))}
      {hours > 0 && `, about ${hoursInWords(hours)}`}
      {takes && `, ${takes}`}
    </span>
  );
  if (isElsewhere)
    return (
      <section className="work-sheet" id={`day-${day}`}>
        <div className="work-elsewhere">
          <h2>
            <a href={`/keep-or-dig/worksheet?day=${day}`}>{title}</a>
          </h2>
          {sum}
        </div>
      </section>
    );
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
    <details className="work-sheet prints-open" id={`day-${day}`} open={isOpen}>
      <summary>
        <h2>{title}</h2>
        {sum}
      </summary>
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
      {!isAlone && (
        <p className="no-print">
          <a href={`/keep-or-dig/worksheet?day=${day}`}>This day alone, to print</a>
        </p>
      )}
    </details>
  );
}
