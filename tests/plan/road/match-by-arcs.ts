import type { Highs } from "highs";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { LinearProgramme } from "../../least-cost";
import { asVariety } from "./as-variety";
import { hasWhatIsAsked } from "./asked-of-a-stem";
import { keptDays } from "./kept-days";
import type { SpecNeed, SpecPlanting } from "./road-by-spec";

/**
 * The match by a slow second method: an arc from every lot of every day to every need that it may serve, straight from the rules of
 * lib/plan/SPEC.md and with nothing of lib/plan/match-network. Lots are cut days of plantings and cooler stock.
 */
export type DirectMatch = {
  readonly lots: readonly Lot[];
  readonly needStems: readonly number[];
  readonly shortCents: readonly number[];
  readonly arcs: readonly { readonly lot: number; readonly need: number; readonly cents: number }[];
};

/** With `ownerId` the stems were cut for that booking; else with `today` they are nobody's on that day, on which events before it have passed. */
type Lot = { variety: Variety; crop: Crop; day: number; stems: number; ownerId?: number; today?: number };

type Cut = Pick<SpecPlanting, "variety" | "crop"> & {
  readonly cutDays: readonly number[];
  readonly usableStems: readonly number[];
};

/** The worst fit as rule M4 states it, age aside, written out anew. */
const WORST_FIT_CENTS = 25;

export function directMatch(
  snapshot: Snapshot,
  plantings: readonly Cut[],
  needs: readonly SpecNeed[],
  ownLots: readonly Lot[] = [],
): DirectMatch {
  const lots = [
    ...plantings.flatMap(({ variety, crop, cutDays, usableStems }) =>
      cutDays.map((day, index): Lot => ({ variety, crop, day, stems: usableStems[index] })),
    ),
    ...snapshot.coolerStock.map((stock) => stored(snapshot, stock)),
    ...ownLots,
  ];
  /** Of stems cut for a booking only what lies between its own needs counts. */
  const bestOf = (lot: Lot) =>
    Math.min(...needs.flatMap((need) => (need.booking.id === lot.ownerId ? (fitOf(need, lot) ?? []) : [])));
  const arcs: { lot: number; need: number; cents: number }[] = [];
  lots.forEach((lot, lotIndex) => {
    needs.forEach((need, needIndex) => {
      const fit = fitOf(need, lot);
      const held = need.eventDay - lot.day;
      const { leadDays } = need;
      const isOwn = lot.ownerId === need.booking.id;
      if (!isOwn && (lot.ownerId !== undefined || (lot.today !== undefined && need.eventDay < lot.today))) return;
      const [days, longest] = keptDays(lot.crop, snapshot);
      if (fit === null || held < (isOwn ? 0 : leadDays) || held > longest) return;
      const whole = wholeStretch(lot.crop, snapshot, need);
      const age =
        held > days
          ? 8 + Math.round(((whole - 8) * (held - days)) / (longest - days))
          : days > leadDays
            ? Math.round((8 * (held - leadDays)) / (days - leadDays))
            : 0;
      arcs.push({ lot: lotIndex, need: needIndex, cents: isOwn ? fit - bestOf(lot) : fit + age });
    });
  });
  const shortCents = needs.map((need) => {
    const weight = weightOf(snapshot, need);
    const asTheyAre = snapshot.varieties.flatMap((variety) =>
      snapshot.crops.filter(({ id }) => id === variety.cropId).map((crop) => asVariety(variety, crop)),
    );
    const ages = [...snapshot.crops, ...asTheyAre]
      .filter(
        (crop) =>
          takes(need, crop) && Math.floor(keptDays(crop, snapshot)[1]) > Math.floor(keptDays(crop, snapshot)[0]),
      )
      .map((crop) => wholeStretch(crop, snapshot, need));
    return Math.max(Math.round(priceOf(snapshot, need) * weight), WORST_FIT_CENTS + Math.max(8, ...ages) + 1);
  });
  return { lots, needStems: needs.map(({ stems }) => stems), shortCents, arcs };
}

/** The same match where of each need so many stems, the first ones, were promised, and cost so many cents more when they are short [M9]. */
export function withPromised(direct: DirectMatch, promised: readonly number[], lossCents: number): DirectMatch {
  const parts = direct.needStems.flatMap((stems, need) => [
    { need, stems: promised[need], cents: direct.shortCents[need] + lossCents },
    { need, stems: stems - promised[need], cents: direct.shortCents[need] },
  ]);
  return {
    lots: direct.lots,
    needStems: parts.map(({ stems }) => stems),
    shortCents: parts.map(({ cents }) => cents),
    arcs: direct.arcs.flatMap(({ lot, need, cents }) =>
      [2 * need, 2 * need + 1].map((part) => ({ lot, need: part, cents })),
    ),
  };
}

function stored({ varieties, crops }: Snapshot, { varietyId, cutOn, stemCount }: CoolerStock): Lot {
  const variety = varieties.filter(({ id }) => id === varietyId)[0];
  const crop = crops.filter(({ id }) => id === variety.cropId)[0];
  return { variety, crop: asVariety(variety, crop), day: toDayNumber(cutOn), stems: stemCount };
}

/** Cents for what is less than the best fit: 6 cents for another crop than named, 2 for a role not its usual one, 1 for each colour down the list. */
function fitOf(need: SpecNeed, { crop, variety }: Lot): number | null {
  const isOtherCrop = need.cropId !== null && need.cropId !== crop.id;
  const place = need.colours.length === 0 ? 0 : need.colours.indexOf(variety.colour);
  const isRefused = !takes(need, crop) || need.booking.unacceptableColours.includes(variety.colour) || place === -1;
  return isRefused ? null : (isOtherCrop ? 6 : 0) + (crop.usualRole !== need.role ? 2 : 0) + place;
}

const weightOf = ({ farm: { statusWeights } }: Snapshot, { booking: { status } }: SpecNeed): number =>
  status === "cancelled" ? 0 : statusWeights[status];

/** What a stem costs that is held to the end of its stretch, as rule M3 states it. */
function wholeStretch(crop: Crop, snapshot: Snapshot, need: SpecNeed): number {
  const weight = weightOf(snapshot, need);
  const cheapest = Math.min(...crop.roles.map((role) => middlePrice(snapshot.crops, role)));
  return Math.max(8, Math.min(Math.round(crop.buyInCents.count * 0.5 * weight), Math.round(cheapest * weight) - 26));
}

/** The lower middle price of the crops whose usual role it is, else of those able; else a cent. */
function middlePrice(crops: readonly Crop[], role: SpecNeed["role"]): number {
  const usual = crops.filter(({ usualRole }) => usualRole === role);
  const able = usual.length > 0 ? usual : crops.filter(({ roles }) => roles.includes(role));
  const prices = able.map(({ buyInCents }) => buyInCents.count).sort((one, two) => one - two);
  return prices[Math.ceil(prices.length / 2) - 1] ?? 1;
}

/** The crop's part of rule M2. */
const takes = ({ role, cropId, cropOnly, asks, booking }: SpecNeed, crop: Crop): boolean =>
  crop.roles.includes(role) &&
  hasWhatIsAsked(asks, crop) &&
  !booking.unacceptableCropIds.includes(crop.id) &&
  !(cropOnly && cropId !== null && cropId !== crop.id);

/**
 * The price of what would be bought on the day that bought stems arrive, were nothing refused: the named crop, else the lower middle one by price of the
 * crops whose usual role it is, else of the other able ones, the first colour in which any is to be had; else the dearest; else a cent.
 */
function priceOf({ crops }: Snapshot, { cropId, cropOnly, role, asks, colours, eventDay, leadDays }: SpecNeed): number {
  const month = Number(toDay(eventDay - leadDays).slice(5, 7));
  const named = crops.filter(({ id }) => id === cropId);
  const usual = crops.filter(({ usualRole }) => usualRole === role);
  const able = crops.filter(({ roles, usualRole }) => roles.includes(role) && usualRole !== role);
  const prices = (list: readonly Crop[]) =>
    list.map(({ buyInCents }) => buyInCents.count).sort((one, two) => one - two);
  for (const list of cropOnly ? [named] : [named, usual, able])
    for (const colour of colours.length > 0 ? colours : [null]) {
      const had = list
        .filter((crop) => hasWhatIsAsked(asks, crop))
        .filter(({ buyInMonths }) => buyInMonths.length === 0 || buyInMonths.includes(month))
        .filter(({ buyInColours: sold }) => colour === null || sold.length === 0 || sold.includes(colour));
      if (had.length > 0) return prices(had)[Math.ceil(had.length / 2) - 1];
    }
  return prices(named.length > 0 ? named : [...usual, ...able]).at(-1) ?? 1;
}

/** The least cost in cents by HiGHS. */
export function costByHighs(highs: Highs, direct: DirectMatch): number {
  return programmeOf(direct, 1).programme.leastCost(highs);
}

/**
 * The least cost, and every need's stems short in that one of the cheapest matches that holds [M7], by HiGHS. A stem short costs a hair more the
 * earlier its need stands, all hairs together less than a cent.
 */
export function leastShort(highs: Highs, direct: DirectMatch): { cents: number; shortStems: number[] } {
  const { programme, short } = programmeOf(direct, direct.needStems.length + 1);
  const columns = programme.leastColumns(highs);
  const shortStems = short.map((column) => Math.max(0, Math.round(columns[column])));
  return { cents: Math.round(costByHighs(highs, direct)), shortStems };
}

/** @param hairs  how many make a cent; with one there are none */
function programmeOf({ lots, needStems, shortCents, arcs }: DirectMatch, hairs: number) {
  const programme = new LinearProgramme();
  const has = lots.map(({ stems }) => programme.row(0, stems));
  const wants = needStems.map((stems) => programme.row(stems, stems));
  const short = wants.map((want, index) => {
    const column = programme.column(shortCents[index] * hairs + (hairs > 1 ? needStems.length - index : 0));
    programme.put(want, column, 1);
    return column;
  });
  for (const { lot, need, cents } of arcs) {
    const column = programme.column(cents * hairs);
    programme.put(has[lot], column, 1);
    programme.put(wants[need], column, 1);
  }
  return { programme, short };
}

/** The least cost in cents by trying every way to serve every single stem. For a handful of stems. */
export function costByTryingAll({ lots, needStems, shortCents, arcs }: DirectMatch): number {
  const wanted = needStems.flatMap((stems, need) => Array.from({ length: stems }, () => need));
  const left = lots.map(({ stems }) => stems);
  const leastFrom = (place: number): number => {
    if (place === wanted.length) return 0;
    const need = wanted[place];
    let least = shortCents[need] + leastFrom(place + 1);
    for (const arc of arcs) {
      if (arc.need !== need || left[arc.lot] === 0) continue;
      left[arc.lot]--;
      least = Math.min(least, arc.cents + leastFrom(place + 1));
      left[arc.lot]++;
    }
    return least;
  };
  return leastFrom(0);
}
