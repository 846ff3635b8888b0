import { describe, expect, test } from "vitest";
import type { Loss } from "#lib/domain/records/loss";
import { winterProposals, winterSeen, withWinterLearned } from "#lib/plan/learning/review/winter-proposals";
import { winterProposalInWords, wintersInWords } from "#lib/plan/words/winter-lesson-words";
import { day, farm, snapshot } from "../../../small-farm";
import { loss } from "../../road/any-loss";

const winter = (given: Partial<Loss>): Loss =>
  loss({ cause: "winter in the ground", seenOn: day("2027-04-20"), ...given });
const HOME = farm({ winter: { ...farm().winter, winterSurvivalShare: 0.5, storageLossShare: 0.1 } });
const proposed = (losses: Loss[], home = HOME) => winterProposals(snapshot({ farm: home, losses }));

describe("a farm that expects half of its clumps to live, and to lose a tenth in store", () => {
  test("[PL3] 96 of 96 alive in one winter make it 74 %, and once more 83 %: two winters weigh more than one", () => {
    const [first, again] = [
      winter({ plantsBefore: 96, plantsLeft: 96 }),
      winter({ id: 2, seenOn: day("2028-04-20"), plantsBefore: 96, plantsLeft: 96 }),
    ];
    // A winter of 96 clumps is known by 96 / 100: (0.5 + 0.96) / 1.96 and (0.5 + 2 × 0.96) / 2.92.
    expect(proposed([first])).toMatchObject([{ part: "ground", was: 0.5, is: 0.74 }]);
    expect(proposed([first, again])).toMatchObject([{ part: "ground", was: 0.5, is: 0.83 }]);
    expect(wintersInWords(proposed([first, again])[0])).toBe(
      "Rests on 2 winters: to spring 2027 96 of 96 clumps came through, to spring 2028 96 of 96 clumps.",
    );
  });

  test("[PL3] four clumps are half a winter, and what comes as expected proposes nothing", () => {
    expect(proposed([winter({ plantsBefore: 4, plantsLeft: 4 })])).toMatchObject([{ is: 0.67 }]);
    expect(proposed([winter({ plantsBefore: 40, plantsLeft: 20 })])).toEqual([]);
    expect(proposed([])).toEqual([]);
  });

  test("[PL3] what came out of the store teaches the loss, and neither teaches the other, nor do voles", () => {
    const stored = winter({ cause: "winter in store", plantsBefore: 96, plantsLeft: 72 });
    expect(proposed([stored, winter({ id: 2, cause: "voles" })])).toMatchObject([
      { part: "store", was: 0.1, is: 0.17 },
    ]);
  });

  test("[PL3] beds of one spring are one winter, and of a bed counted twice the last count stands", () => {
    const beds = [
      winter({ plantsBefore: 60, plantsLeft: 0 }),
      winter({ id: 2, seenOn: day("2027-05-02"), plantsBefore: 60, plantsLeft: 60 }),
      winter({ id: 3, bedId: 2, plantsBefore: 36, plantsLeft: 36 }),
    ];
    expect(proposed(beds)).toMatchObject([{ is: 0.74, winters: [{ spring: 2027, clumps: 96, cameThrough: 96 }] }]);
  });

  test("[PL3] taken twice it is the same, the next winter is weighed beside the first, and a figure typed since begins anew", () => {
    const [first, again] = [
      winter({ plantsBefore: 96, plantsLeft: 96 }),
      winter({ id: 2, seenOn: day("2028-04-20"), plantsBefore: 96, plantsLeft: 96 }),
    ];
    const [one] = proposed([first]);
    const taken = withWinterLearned(HOME, one);
    expect(taken.winter.winterSurvivalShare).toBe(0.74);
    expect(proposed([first], taken)).toEqual([]);
    expect(proposed([first, again], taken)).toMatchObject([{ was: 0.74, is: 0.83 }]);
    expect(withWinterLearned(taken, proposed([first, again], taken)[0]).learnedWinters).toEqual([
      { part: "ground", was: 0.5, is: 0.83 },
    ]);
    const typed = { ...taken, winter: { ...taken.winter, winterSurvivalShare: 0.6 } };
    expect(proposed([first], typed)).toMatchObject([{ was: 0.6, is: 0.8 }]);
    expect(winterProposalInWords(one)).toBe("74 %, now 50 %");
  });
});

test("[PL3] a winter is known as well as Bayes’ rule has it, summed over a fine grid of survivals", () => {
  const size = 4;
  for (const mean of [0.3, 0.5, 0.8])
    for (const clumps of [1, 4, 20])
      for (const lived of [0, Math.round(clumps / 3), clumps]) {
        let [sum, weights] = [0, 0];
        for (let step = 0.5; step < 20_000; step++) {
          const survival = step / 20_000;
          const weight =
            survival ** (mean * size - 1 + lived) * (1 - survival) ** ((1 - mean) * size - 1 + clumps - lived);
          sum += survival * weight;
          weights += weight;
        }
        const believed = mean + winterSeen(clumps) * (lived / clumps - mean);
        expect(Math.abs(sum / weights - believed)).toBeLessThan(0.002);
      }
});
