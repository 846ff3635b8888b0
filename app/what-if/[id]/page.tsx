import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { z } from "zod";
import { latestChanges, revision } from "#db/journal/journal";
import type { WhatIf } from "#lib/domain/what-if";
import { comparison } from "#lib/plan/what-if/comparison";
import { winterTotals } from "#lib/plan/what-if/winter";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { farmDatabase, loadPlan } from "../../load";
import { ProblemList } from "../../ui/problem-list";
import { Adopt } from "../adopt/adopt";
import { Adopted } from "../adopt/adopted";
import { BeforeAfter } from "../compared/before-after";
import { Outcome } from "../compared/outcome";
import { keptWhatIf } from "../kept-what-ifs";
import { RenameRemove } from "../rename-remove";
import { AddChange, GROUPS } from "../suppose/add-change";
import { ChangeList } from "../suppose/change-list";
import { wouldBePlan } from "../would-be-plan";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Record<string, unknown>> };

const query = z.object({
  add: z.enum(GROUPS).catch("beds"),
  adopt: z.literal("asked").optional().catch(undefined),
  adopted: z.coerce.number().int().optional().catch(undefined),
});

const findWhatIf = async ({ params }: Pick<Props, "params">): Promise<WhatIf | undefined> => {
  const id = z.coerce
    .number()
    .int()
    .safeParse((await params).id);
  return id.success ? keptWhatIf(id.data) : undefined;
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await findWhatIf(props))?.name ?? "No such what-if" };
}

/** One what-if: what it supposes, the season before and after, and the step that makes the farm so. */
export default async function WhatIfPage(props: Props) {
  const whatIf = await findWhatIf(props);
  if (!whatIf) notFound();
  const { add, adopt, adopted } = query.parse(await props.searchParams);
  const database = farmDatabase();
  const now = loadPlan(whatIf.seasonYear);
  const farm = now.snapshot;
  const { plan, misfits } = wouldBePlan(farm, whatIf);
  const compared = comparison([now, plan], winterTotals);
  return (
    <>
      <p className="crumb">
        <a href="/what-if">What if</a>
      </p>
      <h1>{whatIf.name}</h1>
      <p className="soft">
        Season {whatIf.seasonYear}. Nothing of the farm changes until this is adopted.{" "}
        <a href={`/what-if?with=${whatIf.id}#compared`}>Compare it with others</a>
      </p>
      {adopted !== undefined && adopted === latestChanges(database, 1)[0]?.id && <Adopted whatIf={whatIf} />}
      <Outcome compared={compared} changeCount={whatIf.changes.length} />
      <section aria-labelledby="supposed">
        <h2 id="supposed">What it supposes</h2>
        <ChangeList whatIf={whatIf} farm={farm} misfits={misfits} />
        <RenameRemove whatIf={whatIf} />
      </section>
      <AddChange whatIf={whatIf} farm={farm} wouldBe={plan.snapshot} group={add} />
      <ProblemList
        title="The forecast of this what-if is missing something"
        problems={plan.problems.map(barrenInWords)}
      />
      <BeforeAfter whatIf={whatIf} now={now} compared={compared} />
      <Adopt whatIf={whatIf} farm={farm} revision={revision(database)} isAsked={adopt !== undefined} />
    </>
  );
}
