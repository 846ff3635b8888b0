import type { Farm } from "./records/farm-settings";

/** The edition of the built-in winter figures that a new farm starts from. A farm of an older one is offered what changed since, once. */
export const WINTER_FIGURES_EDITION = 2;

type WinterFigureName = keyof Farm["winter"];

/** A built-in winter figure that changed: what farms of the edition before were started with, what new ones are, and why. */
export type ChangedWinterFigure = {
  readonly name: WinterFigureName;
  readonly was: number;
  readonly is: number;
  readonly why: string;
};

/** All from memory: no published figure was found for any of them. */
const CHANGED_IN_EDITION_2: readonly ChangedWinterFigure[] = [
  {
    name: "leafSettlingShare",
    was: 0,
    is: 0.2,
    why: "Leaves pack down: 10 inches laid are about 8 that stay.",
  },
  { name: "leafEdgeMetres", was: 0, is: 0.15, why: "Frost comes in from the side: leaves go past the edge." },
  {
    name: "leafHaulHoursPerCubicMetre",
    was: 0,
    is: 0.5,
    why: "Somebody loads, drives and tips the leaves.",
  },
  { name: "tarpEdgeMetres", was: 0, is: 0.4, why: "A tarp no wider than the bed leads its water into the bed." },
  {
    name: "replantDeadShare",
    was: 0,
    is: 1,
    why: "A dead clump's place is planted again in spring, and blooms late.",
  },
  {
    name: "freeBedCentsPerSquareMetre",
    was: 150,
    is: 0,
    why: "An early crop counts once you say what you would sell from it.",
  },
];

/** The built-in winter figures that the farm still has as it was started with and that stand otherwise today; none once they are settled. */
export const changedWinterFigures = ({ winter }: Pick<Farm, "winter">): readonly ChangedWinterFigure[] =>
  winter.figuresEdition >= WINTER_FIGURES_EDITION
    ? []
    : CHANGED_IN_EDITION_2.filter(({ name, was }) => winter[name] === was);

/** The farm with the figures of today in their place. Those that the grower changed are not among them and stay. */
export const withWinterFiguresTaken = (farm: Farm): Farm => ({
  ...farm,
  winter: {
    ...farm.winter,
    ...Object.fromEntries(changedWinterFigures(farm).map(({ name, is }) => [name, is])),
    figuresEdition: WINTER_FIGURES_EDITION,
  },
});

/** The farm with its figures as they are, not to be asked about them again. */
export const withWinterFiguresKept = (farm: Farm): Farm => ({
  ...farm,
  winter: { ...farm.winter, figuresEdition: WINTER_FIGURES_EDITION },
});
