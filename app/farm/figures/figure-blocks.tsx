import type { ReactNode } from "react";
import type { Farm } from "#lib/domain/records/farm-settings";
import { eventDaysOfSaturday } from "#lib/plan/words/event-days-words";
import { ZONES, zoneInWords } from "../settings/zone-words";
import { FigureLine } from "./figure-line";
import { FrostLine } from "./frost-line";

type Props = { farm: Farm };

/** What the farm is called, and how it writes. */
export const OfTheFarm = ({ farm }: Props) => (
  <Block id="the-farm" title="The farm" farm={farm} names={["name"]}>
    <FigureLine
      name="zone"
      farm={farm}
      suggestions={ZONES}
      hint={zoneInWords(farm.zone, farm.units) ?? "For example 7a."}
    />
    {lines(farm, ["units", "decimalMark", "dateOrder", "ownColours"])}
  </Block>
);

export const OfTheWeek = ({ farm }: Props) => (
  <Block id="week" title="The week" farm={farm} names={["pickingWeekdays", "orderDaysAhead", "finalCountDays"]} />
);

export const OfEventDays = ({ farm }: Props) => (
  <Block
    id="event-days"
    title="Event days"
    farm={farm}
    note={`Of an event on a Saturday: ${eventDaysOfSaturday(farm)}. Each booking can have days of its own.`}
    names={["leadDays", "wornLaterDays", "designDays", "deliverDays"]}
  />
);

export const OfTheStore = ({ farm }: Props) => (
  <Block
    id="store"
    title="Where cut stems stand"
    farm={farm}
    note="How long a crop keeps in it stands with the crop; a warmer store takes days away."
    names={["storeC", "coolRoomC", "storesDry"]}
  />
);

export const OfHands = ({ farm }: Props) => (
  <Block
    id="hands"
    title="Hands and room"
    farm={farm}
    note="What is at hand is yours to say: Season, its weeks and Today then name the days that take more."
    names={["cutStemsPerHour", "cutHoursPerDay", "benchStemsPerHour", "benchHoursPerWeek", "bucketPlaces"]}
  />
);

export const OfFrost = ({ farm }: Props) => (
  <Block
    id="frost"
    title="Frost"
    farm={farm}
    note="One year in ten has frost before the early date of autumn, and one in ten after the late date of spring."
    picture={<FrostLine frost={farm.frost} />}
    names={[
      "frost.lastSpringP90",
      "frost.lastSpringP50",
      "frost.lastSpringP10",
      "frost.firstAutumnP10",
      "frost.firstAutumnP90",
      "frostAlarmC",
      "coldNightOn",
      "coldNightLowC",
      "killingFrosts",
    ]}
  />
);

export const OfClaims = ({ farm }: Props) => (
  <Block
    id="claims"
    title="Whose claim is better"
    farm={farm}
    note="Of a hundred such bookings, how many come true. When stems are scarce the better claim has them. The figures to start from are our own guess. What was promised goes before all claims."
    names={[
      "statusWeights.confirmed",
      "statusWeights.held",
      "statusWeights.enquiry",
      "promiseLossCents",
      "enquiryDays",
      "holdDays",
    ]}
  />
);

export const OfDigging = ({ farm }: Props) => (
  <Block
    id="digging"
    title="Digging and storing"
    farm={farm}
    names={[
      "winter.digClumpsPerHour",
      "winter.divideClumpsPerHour",
      "winter.replantTubersPerHour",
      "winter.storageCentsPerClump",
      "winter.storageLossShare",
      "winter.divisionsPerClump",
      "winter.tuberCents",
      "winter.tubersWantedShare",
    ]}
  />
);

export const OfKeeping = ({ farm }: Props) => (
  <Block
    id="keeping"
    title="Keeping in the ground"
    farm={farm}
    names={[
      "winter.leafDepthMetres",
      "winter.leafSettlingShare",
      "winter.leafEdgeMetres",
      "winter.leafHaulHoursPerCubicMetre",
      "winter.leafCentsPerCubicMetre",
      "winter.tarpEdgeMetres",
      "winter.tarpCentsPerSquareMetre",
      "winter.coverHoursPerSquareMetre",
      "winter.replantDeadShare",
      "winter.freeBedCentsPerSquareMetre",
      "winter.leafCubicMetresAtHand",
      "winter.tarpSquareMetresAtHand",
      "winter.expectedFrom",
      "winter.expectedSaturdayCount",
      "winter.expectedWeightShare",
      "winter.hoursAtHand",
      "winter.workHoursPerDay",
      "winter.keepShareAtMost",
    ]}
  />
);

type BlockProps = Props & {
  id: string;
  title: string;
  names: readonly string[];
  note?: string;
  picture?: ReactNode;
  children?: ReactNode;
};

const Block = ({ id, title, farm, names, note, picture, children }: BlockProps) => (
  <section className="figure-block" aria-labelledby={id}>
    <h2 id={id}>{title}</h2>
    {note && <p className="note">{note}</p>}
    {picture}
    <ul className="leaders">
      {lines(farm, names)}
      {children}
    </ul>
  </section>
);

const lines = (farm: Farm, names: readonly string[]) =>
  names.map((name) => <FigureLine key={name} name={name} farm={farm} />);
