import type { Snapshot } from "#lib/domain/snapshot";
import type { FlowSolution } from "#lib/maths/flow-network";
import type { Selection, SwitchEffect } from "#lib/maths/switch-flow/problem";
import { SwitchCosts } from "#lib/maths/switch-flow/switch-costs";
import type { Need } from "#lib/plan/road/needs";
import { seasonOfBooking } from "#lib/plan/road/seasons";
import { type WinterFutures, winterFutures } from "./futures";
import { limitsOn, type WinterLimit, winterLimits } from "./limits";

/**
 * All that the questions about one season's beds share: made once, asked often. A selection has a switch for each bed without a flag,
 * on when it is kept.
 */
export type WinterSeason = {
  readonly futures: WinterFutures;
  /** The places in `futures.beds` of the beds without a flag: what each switch stands for. */
  readonly openBeds: readonly number[];
  readonly limits: readonly WinterLimit[];
  readonly costs: SwitchCosts;
  /** The match's flow when these beds are kept (by place in `futures.beds`), with one bed's effect put in place of its own if given. */
  readonly flowOf: (
    isKept: Selection,
    instead?: { readonly bed: number; readonly effect: SwitchEffect },
  ) => FlowSolution;
};

export function winterSeason(snapshot: Snapshot, seasonYear: number): WinterSeason {
  const futures = winterFutures(snapshot, seasonYear);
  const { beds, network, effects } = futures;
  const openBeds = [...beds.keys()].filter((bed) => beds[bed].forbidden.length === 0);
  const solve = network.solver();
  return {
    futures,
    openBeds,
    limits: limitsOn(winterLimits(snapshot.farm, beds), openBeds),
    costs: new SwitchCosts({
      flow: network.flow,
      giverCount: network.giverCount,
      effects: openBeds.map((bed) => effects[bed]),
      switchCost: openBeds.map((bed) => beds[bed].keep.cents - beds[bed].dig.cents),
      baseCost: beds.reduce((sum, { dig }) => sum + dig.cents, 0),
    }),
    flowOf: (isKept, instead) => {
      const supply = network.flow.supply.slice();
      isKept.forEach((kept, bed) => {
        if (!kept) return;
        const { nodes, units } = bed === instead?.bed ? instead.effect : effects[bed];
        for (let at = 0; at < nodes.length; at++) supply[nodes[at]] += units[at];
      });
      return solve(supply);
    },
  };
}

/** Every bed's fate from the switches: beds with a flag are dug [K2]. */
export function fates({ openBeds, futures }: WinterSeason, selection: Selection): boolean[] {
  const isKept = futures.beds.map(() => false);
  openBeds.forEach((bed, index) => {
    isKept[bed] = selection[index];
  });
  return isKept;
}

/** The switches of the beds with these ids. Throws RangeError if one is no candidate or has a flag. */
export function selectionOf({ openBeds, futures }: WinterSeason, keptBedIds: readonly number[]): Selection {
  const ids = openBeds.map((bed) => futures.beds[bed].bed.id);
  const stray = keptBedIds.find((id) => !ids.includes(id));
  if (stray !== undefined) throw new RangeError(`keptBedIds must be candidate beds without a flag, got ${stray}`);
  return ids.map((id) => keptBedIds.includes(id));
}

export const keptIds = ({ openBeds, futures }: WinterSeason, selection: Selection): number[] =>
  openBeds.filter((_, index) => selection[index]).map((bed) => futures.beds[bed].bed.id);

/** Focal stems of the season that a flow leaves short. */
export const focalShortStems = ({ needs, network, seasonYear }: WinterFutures, solution: FlowSolution): number =>
  needs.reduce((sum, need, index) => (isFocalOf(seasonYear, need) ? sum + network.unmetOf(index, solution) : sum), 0);

/** Whether a need is for focal stems of a season: the match may see another's beside it. */
export const isFocalOf = (seasonYear: number, { role, booking }: Need): boolean =>
  role === "focal" && seasonOfBooking(booking) === seasonYear;
