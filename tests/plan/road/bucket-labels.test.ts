import { expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import { type BucketLabel, bucketLabels } from "#lib/plan/road/bucket-labels";
import type { PickLine } from "#lib/plan/road/pick-list";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, variety } from "../../small-farm";

const own = (count: number) => ({ count, mark: "own" as const, source: null });
const line = (varietyId: number, bucketStems: number, stems: number): PickLine => ({
  booking: booking({ id: 1 }),
  cutDay: 20_000,
  stand: { kind: "cooler", stock: { id: 1, varietyId, cutOn: day("2027-06-01"), stemCount: stems } },
  variety: variety({ id: varietyId, name: `V${varietyId}` }),
  crop: crop({ id: varietyId, bucketStems: own(bucketStems) }),
  roles: ["focal"],
  stems,
  stemsToCut: stems,
  bunchCount: 1,
  bucketCount: 0,
  heldDays: 2,
  isStretched: false,
});
const inWords = (labels: readonly BucketLabel[]) =>
  labels.map(
    ({ bucket, bucketCount, contents }) =>
      `${bucket} of ${bucketCount}: ${contents.map(({ variety, stems }) => `${variety.name} ${stems}`).join(", ")}`,
  );

test("[P1] 30 stems at 25 a bucket, then 32 at 40, fill two buckets: 25, and 5 with all 32", () => {
  expect(inWords(bucketLabels([line(1, 25, 30), line(2, 40, 32)]))).toEqual(["1 of 2: V1 25", "2 of 2: V1 5, V2 32"]);
});

test("[P1] a stem that no longer fits wholly goes into the next bucket", () => {
  expect(inWords(bucketLabels([line(1, 3, 2), line(2, 2, 2)]))).toEqual(["1 of 2: V1 2", "2 of 2: V2 2"]);
});

test("[P1] on the demo and ten seeded farms: as many labels as buckets, no stem lost, none overfull by more than a stem", () => {
  const farms = [
    demoSnapshot(),
    ...Array.from({ length: 10 }, (_, seed) => seededFarm(seed, { bedCount: 15, bookingCount: 15 })),
  ];
  for (const farm of farms) {
    const { pickList } = provenPlan(farm, 2027);
    for (const { lines } of byPickingDay(pickList)) {
      const labels = bucketLabels(lines);
      const { stems, bucketCount } = pickTotals(lines);
      expect(labels.length).toBe(bucketCount);
      expect(labels.reduce((sum, label) => sum + label.stems, 0)).toBe(stems);
      for (const { contents, booking, cutDay } of labels) {
        const share = contents.reduce((sum, { stems, crop }) => sum + stems / crop.bucketStems.count, 0);
        const largest = Math.max(...contents.map(({ crop }) => 1 / crop.bucketStems.count));
        expect(share).toBeLessThanOrEqual(1 + largest);
        for (const { variety } of contents)
          expect(lines.some((row) => row.booking === booking && row.cutDay === cutDay && row.variety === variety)).toBe(
            true,
          );
      }
    }
  }
});
