import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { z } from "zod";
import { latestChanges, revision } from "#db/journal/journal";
import type { WhatIf } from "#lib/domain/what-if";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { differenceTitle } from "#lib/plan/words/supposed-words";
import { today } from "../../clock";
import { farmDatabase, loadPlan } from "../../load";
import { ProblemList } from "../../ui/problem-list";
import { Adopted } from "../adopt/adopted";
import { comparedPlans } from "../compared/compared-plans";
import { ComparedTotals } from "../compared/compared-totals";
import { EveryWeek } from "../compared/every-week";
import { PairKey } from "../compared/pair-key";
import { AS_IT_STANDS } from "../compared/plan-columns";
import { Plate } from "../compared/plate";
import { PairMarks, pairUnit } from "../compared/ribbon-pair";
import { keptWhatIf } from "../kept-what-ifs";
import { RenameRemove } from "../rename-remove";
import { AddChange, GROUPS } from "../suppose/add-change";
import { ChangeList } from "../suppose/change-list";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Record<string, unknown>> };

const query = z.object({
  add: z.enum(GROUPS).catch("beds"),
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
  const { add, adopted } = query.parse(await props.searchParams);
  const database = farmDatabase();
  const now = loadPlan(whatIf.seasonYear);
  const farm = now.snapshot;
  const { compared, supposed } = comparedPlans(now, [whatIf]);
  const [one] = supposed;
  const unit = pairUnit(one.touched);
  const plans = [AS_IT_STANDS, whatIf];
  return (
    <>
      <p className="crumb">
        <a href="/what-if">What if</a>
      </p>
      <header className="what-if-head">
        <div>
          <h1>
            {whatIf.changes.length === 0
              ? whatIf.name
              : differenceTitle([{ whatIf, stems: one.difference.shortStems }], farm)}
          </h1>
          <p className="soft">Season {whatIf.seasonYear}. Nothing of the farm changes until this is adopted.</p>
        </div>
        <ComparedTotals plans={plans} comparison={compared} />
      </header>
      {adopted !== undefined && adopted === latestChanges(database, 1)[0]?.id && <Adopted whatIf={whatIf} />}
      {whatIf.changes.length > 0 && (
        <>
          {one.touched.length > 0 && <PairKey unit={unit} />}
          <PairMarks />
          <Plate supposed={one} page={{ farm, revision: revision(database), today: today(), isOwnPage: true, unit }} />
        </>
      )}
      <section aria-labelledby="supposed">
        <h2 id="supposed">What it supposes</h2>
        <ChangeList whatIf={whatIf} farm={farm} misfits={one.misfits} />
        <RenameRemove whatIf={whatIf} />
      </section>
      <AddChange whatIf={whatIf} farm={farm} wouldBe={one.plan.snapshot} group={add} />
      <ProblemList
        title="The forecast of this what-if is missing something"
        problems={one.plan.problems.map(barrenInWords)}
      />
      <EveryWeek plans={plans} weeks={compared.weeks} />
    </>
  );
}
