import { areaSquareMetres, type Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";

/**
 * What a bed of tender perennials costs in its two futures, one named rule each. A clump stands for each plant of the planting; the
 * whole bed is covered, whatever else grows in it. Work rates, prices and survival are the farm's own settings; those a new farm starts
 * from are from memory, but for the storage loss (5 to 10 %, published by the American Dahlia Society, ADS-STORE).
 */
type Rates = Pick<Farm, "winter">;

/** Clumps to lift, or to leave in. */
export const clumpCount = (plantings: readonly Planting[]): number =>
  plantings.reduce((sum, { plantCount }) => sum + plantCount, 0);

/** Hours to lift so many clumps, tops off and soil shaken out. */
export const diggingHours = (clumps: number, { winter }: Rates): number => clumps / winter.digClumpsPerHour;

/** Hours to wash, divide, label and pack so many clumps. */
export const dividingHours = (clumps: number, { winter }: Rates): number => clumps / winter.divideClumpsPerHour;

/** Hours to set so many tubers in spring. */
export const replantingHours = (tubers: number, { winter }: Rates): number => tubers / winter.replantTubersPerHour;

/** Cents for crates, packing and a cool room over the winter. */
export const storageCents = (clumps: number, { winter }: Rates): number => clumps * winter.storageCentsPerClump;

/** Tubers that rot or shrivel in store, of all that the clumps divide into. */
export const storageLossTubers = (clumps: number, { winter }: Rates): number =>
  clumps * winter.divisionsPerClump * winter.storageLossShare;

/** Tubers over once each clump's place is planted again; below 0, tubers to buy. */
export const tubersGained = (clumps: number, farm: Rates): number =>
  clumps * farm.winter.divisionsPerClump - storageLossTubers(clumps, farm) - clumps;

/**
 * Cents that the tubers gained are worth: only the share that is wanted, for more beds or for sale, saves money. Below 0 when the store
 * gives fewer than the bed needs: every one of those must be bought.
 */
export function tubersGainedCents(clumps: number, farm: Rates): number {
  const gained = tubersGained(clumps, farm);
  return gained * farm.winter.tuberCents * (gained > 0 ? farm.winter.tubersWantedShare : 1);
}

/** Square metres of a bed and so much past each of its edges. */
const withEdges = ({ lengthMetres, widthMetres }: Bed, edgeMetres: number): number =>
  (lengthMetres + 2 * edgeMetres) * (widthMetres + 2 * edgeMetres);

/** Metres of leaves to lay, so that what must stay is left once they have settled. */
export const leafDepthLaidMetres = ({ winter }: Rates): number =>
  winter.leafDepthMetres / (1 - winter.leafSettlingShare);

/** Cubic metres of leaves to cover a bed and past its edges, as they are laid, before they settle. */
export const leafCubicMetres = (bed: Bed, farm: Rates): number =>
  withEdges(bed, farm.winter.leafEdgeMetres) * leafDepthLaidMetres(farm);

/** Cents for the leaves of a bed. */
export const leafCents = (bed: Bed, farm: Rates): number =>
  leafCubicMetres(bed, farm) * farm.winter.leafCentsPerCubicMetre;

/** Hours to load, drive and tip the leaves of a bed. */
export const haulingHours = (bed: Bed, farm: Rates): number =>
  leafCubicMetres(bed, farm) * farm.winter.leafHaulHoursPerCubicMetre;

/** Square metres of tarp over a bed and past its edges. */
export const tarpSquareMetres = (bed: Bed, { winter }: Rates): number => withEdges(bed, winter.tarpEdgeMetres);

/** Cents for the tarp of a bed, for one winter. */
export const tarpCents = (bed: Bed, farm: Rates): number =>
  tarpSquareMetres(bed, farm) * farm.winter.tarpCentsPerSquareMetre;

/** Hours to cover a bed in autumn and uncover it in spring, both together. */
export const coveringHours = (bed: Bed, { winter }: Rates): number =>
  areaSquareMetres(bed) * winter.coverHoursPerSquareMetre;

/** The share of clumps expected to live through the winter in the ground: the planting's own, else the farm's. */
export const winterSurvival = ({ winterSurvivalShare }: Planting, { winter }: Rates): number =>
  winterSurvivalShare ?? winter.winterSurvivalShare;

/** Clumps expected to die in the ground. */
export const clumpsLost = (plantings: readonly Planting[], farm: Rates): number =>
  plantings.reduce((sum, planting) => sum + planting.plantCount * (1 - winterSurvival(planting, farm)), 0);

/** Tubers set in spring for clumps expected to have died in the ground: those, and no others, bloom late and are paid for. */
export const tubersReplanted = (plantings: readonly Planting[], farm: Rates): number =>
  clumpsLost(plantings, farm) * farm.winter.replantDeadShare;

/** Cents to buy the tubers that take the places of dead clumps. */
export const replacementCents = (plantings: readonly Planting[], farm: Rates): number =>
  tubersReplanted(plantings, farm) * farm.winter.tuberCents;

/** Cents that an early-spring crop in the bed would bring: lost when the bed is kept, since it is not free until planting. */
export const freeBedCents = (bed: Bed, { winter }: Rates): number =>
  areaSquareMetres(bed) * winter.freeBedCentsPerSquareMetre;

/**
 * One future of a bed in money and in what it takes. Each kind of money is rounded to whole cents once, so that `cents` and every total
 * over beds add up exactly.
 */
export type WinterCost = {
  readonly cents: number;
  readonly hours: number;
  readonly labourCents: number;
  /** Storage when dug; leaves and tarp when kept. */
  readonly materialCents: number;
  /** Kept: tubers for the places of clumps expected to die. Dug: less the worth of tubers gained. */
  readonly replacementCents: number;
  /** Kept: the early-spring crop that has no bed. */
  readonly freeBedCents: number;
  readonly leafCubicMetres: number;
  readonly tarpSquareMetres: number;
};

/** Lifted, divided, stored and planted again. */
export function digCost(plantings: readonly Planting[], farm: Farm): WinterCost {
  const clumps = clumpCount(plantings);
  return inWholeCents({
    hours: diggingHours(clumps, farm) + dividingHours(clumps, farm) + replantingHours(clumps, farm),
    wageCentsPerHour: farm.winter.wageCentsPerHour,
    materialCents: storageCents(clumps, farm),
    replacementCents: -tubersGainedCents(clumps, farm),
    freeBedCents: 0,
    leafCubicMetres: 0,
    tarpSquareMetres: 0,
  });
}

/** Left in, under leaves and a tarp, and its dead replanted in spring. */
export function keepCost(bed: Bed, plantings: readonly Planting[], farm: Farm): WinterCost {
  return inWholeCents({
    hours: haulingHours(bed, farm) + coveringHours(bed, farm) + replantingHours(tubersReplanted(plantings, farm), farm),
    wageCentsPerHour: farm.winter.wageCentsPerHour,
    materialCents: leafCents(bed, farm) + tarpCents(bed, farm),
    replacementCents: replacementCents(plantings, farm),
    freeBedCents: freeBedCents(bed, farm),
    leafCubicMetres: leafCubicMetres(bed, farm),
    tarpSquareMetres: tarpSquareMetres(bed, farm),
  });
}

type Unrounded = Omit<WinterCost, "cents" | "labourCents"> & { readonly wageCentsPerHour: number };

function inWholeCents({ wageCentsPerHour, hours, ...rest }: Unrounded): WinterCost {
  const whole = (cents: number) => Math.round(cents) + 0;
  const labourCents = whole(hours * wageCentsPerHour);
  const materialCents = whole(rest.materialCents);
  const replacementCents = whole(rest.replacementCents);
  const freeBedCents = whole(rest.freeBedCents);
  const cents = labourCents + materialCents + replacementCents + freeBedCents;
  return { ...rest, hours, labourCents, materialCents, replacementCents, freeBedCents, cents };
}
