import { type Day, inShort, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Role } from "#lib/domain/words";
import { type CropLesson, type SeasonLesson, seasonLesson, weeksAhead } from "#lib/plan/learning/season/season-lesson";
import type { Outlook } from "#lib/plan/learning/season/season-outlook";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { cropLessonInWords, seenInWords } from "#lib/plan/words/season-lesson-words";
import { followedInWords } from "#lib/plan/words/shown-words";
import { Form } from "../ui/form.client";
import { Table } from "../ui/table";
import { OwnSeason } from "./own-season";
import { followSeason } from "./own-season-actions";

type AheadOfRole = readonly [Role, readonly Outlook[]];

/** Crops that are told at once, those furthest from what was expected first. */
const CROPS_FIRST = 6;

/** How far a crop is from what was expected: a day late weighs as much as a twentieth of its stems. */
const newsOf = ({ daysLate, yieldFactor }: CropLesson): number => Math.abs(daysLate) + 20 * Math.abs(yieldFactor - 1);

/**
 * What the recorded cuts of the season tell: how late each crop is and how heavy, and what the next four weeks bring, in eight seasons of ten. Nothing
 * before and after the season.
 */
export function SeasonLessonPlate({
  snapshot,
  seasonYear,
  today,
}: {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  readonly today: Day;
}) {
  if (yearOf(today) !== seasonYear) return null;
  const lesson = seasonLesson(snapshot, seasonYear);
  return (
    <section aria-labelledby="shown">
      <h2 id="shown">What the season has shown</h2>
      {lesson ? (
        <Shown lesson={lesson} snapshot={snapshot} today={today} />
      ) : (
        <p>
          Nothing yet: cuts that are recorded and <a href="/beds/buds">buds that are looked at</a> tell how late it
          runs.
        </p>
      )}
      {lesson && (
        <div className="row apart">
          <p>{followedInWords(snapshot.farm.followsSeason, snapshot.shown)}</p>
          <Form
            action={followSeason}
            hidden={{ follows: snapshot.farm.followsSeason ? "no" : "yes" }}
            submit={snapshot.farm.followsSeason ? "Plan by the curves alone" : "Plan with what was seen"}
            label="What the plan goes by"
            isQuiet
          />
        </div>
      )}
      <OwnSeason snapshot={snapshot} seasonYear={seasonYear} />
    </section>
  );
}

function Shown({ lesson, snapshot, today }: { lesson: SeasonLesson; snapshot: Snapshot; today: Day }) {
  const byNews = [...lesson.crops].sort((a, b) => newsOf(b) - newsOf(a));
  const [first, rest] = [byNews.slice(0, CROPS_FIRST), byNews.slice(CROPS_FIRST)];
  const from = toDayNumber(today);
  const ahead = [...weeksAhead(lesson, snapshot, from)].filter(([, weeks]) =>
    weeks.some(({ meanStems }) => meanStems >= 1),
  );
  return (
    <>
      <Crops lessons={first} />
      {rest.length > 0 && (
        <details>
          <summary>{countOf(rest.length, "more crop")}</summary>
          <Crops lessons={rest} />
        </details>
      )}
      <p>
        <a href="/beds/buds">Walk the beds for buds</a>
      </p>
      {ahead.length > 0 && (
        <Table
          caption="Stems ready in the next four weeks, in eight seasons of ten"
          isNarrow
          columns={[
            { head: "role", kind: "name", cell: ([role]) => role },
            ...[0, 1, 2, 3].map((week) => ({
              head: inShort(toDay(from + 7 * week)),
              kind: "number" as const,
              className: "range",
              cell: ([, weeks]: AheadOfRole) => (
                <>
                  {inWholes(Math.round(weeks[week].lowStems))}–<wbr />
                  {inWholes(Math.round(weeks[week].highStems))}
                </>
              ),
            })),
          ]}
          rows={ahead}
          keyOf={([role]) => role}
        />
      )}
    </>
  );
}

const Crops = ({ lessons }: { lessons: readonly CropLesson[] }) => (
  <ul className="plain">
    {lessons.map((one) => (
      <li key={one.crop.id}>
        <b>{one.crop.name}</b>: {cropLessonInWords(one)} <small>{seenInWords(one)}</small>
      </li>
    ))}
  </ul>
);
