import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { plan } from "#lib/plan/road/plan";

/** The first plan of a fresh process: prints its milliseconds. */
const farm = seededFarm(1, TYPICAL);
const start = performance.now();
const { weeks, pickList, buying, surplus } = plan(farm, 2027);
if (!weeks || !pickList || !buying || !surplus) throw new Error("no plan");
console.log(performance.now() - start);
