import type { SpecPlanting } from "./road-by-spec";

/** Stem by stem in the order of cutting: one more can be promised as soon as its whole spare is cut too [F14]. */
export function findUsable({ crop, cutStems, usableStems }: SpecPlanting): void {
  const spareMillionths = Math.round(crop.cutSpareShare.count * 1e6);
  let [cut, promised] = [0, 0];
  for (const stems of cutStems) {
    const before = promised;
    for (let stem = 0; stem < stems; stem++) {
      cut++;
      if ((promised + 1) * (1e6 + spareMillionths) <= cut * 1e6) promised++;
    }
    usableStems.push(promised - before);
  }
}
