import type { ReactNode } from "react";
import { withWeekday } from "#lib/domain/day";
import type { ObservedChance } from "#lib/maths/observed-chance";
import type { BookingSureness, KeepSureness } from "#lib/plan/chance/keep-sureness";
import { countOf, inPercent, inRoundMoney, inTenths, inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";

/** Events of early summer, which beds kept in the ground are kept for. */
const isEarlySummer = (eventOn: string): boolean => ["06", "07"].includes(eventOn.slice(5, 7));

/** "87 % ± 1.1 %": a chance as observed, with its standard error. */
const chanceInWords = ({ share, standardError }: ObservedChance): string =>
  `${inPercent(share)} ± ${inTenths(standardError * 100)} %`;

type SeasonRow = { readonly name: string; readonly low: number; readonly likely: number; readonly high: number };

const SEASON_COLUMNS: readonly Column<SeasonRow>[] = [
  { head: "Beds", kind: "name", cell: ({ name }) => name },
  { head: "Low", kind: "number", cell: ({ low }) => inWholes(low) },
  { head: "Likely", kind: "number", cell: ({ likely }) => inWholes(likely) },
  { head: "High", kind: "number", cell: ({ high }) => inWholes(high) },
];

/** The chance before and after, of the focal stems or of every stem; a booking may ask for none. */
const chancePair = (
  of: string,
  chancesOf: (row: BookingSureness) => BookingSureness["focalCovered"],
): Column<BookingSureness>[] => {
  const column = (head: string, cell: (chances: readonly ObservedChance[]) => ReactNode): Column<BookingSureness> => ({
    head: `${of}, ${head}`,
    kind: "number",
    cell: (row) => {
      const chances = chancesOf(row);
      return chances ? cell(chances) : "asks for none";
    },
  });
  return [
    column("every bed dug", ([dug]) => chanceInWords(dug)),
    column("as ticked", ([dug, ticked]) => <Change before={dug} after={ticked} />),
  ];
};

const BOOKING_COLUMNS: readonly Column<BookingSureness>[] = [
  { head: "Event", cell: ({ eventOn }) => withWeekday(eventOn) },
  { head: "Booking", kind: "name", cell: ({ bookingId, client }) => <a href={`/bookings/${bookingId}`}>{client}</a> },
  ...chancePair("Focal", ({ focalCovered }) => focalCovered),
  ...chancePair("Every stem", ({ covered }) => covered),
];

/** What the sampled seasons say. `isSame`: nothing is kept, so there is nothing to beat. */
export function SurenessFound({ sureness, isSame }: { sureness: KeepSureness; isSame: boolean }) {
  const { seasonCount, cheaperChance, sameChance, differenceCents, focalShortStems } = sureness;
  const early = sureness.bookings.filter(({ eventOn }) => isEarlySummer(eventOn));
  const shown = early.length > 0 ? early : sureness.bookings;
  return (
    <>
      <p className="notice" role="status">
        {isSame ? (
          <>No bed is ticked: these are {countOf(seasonCount, "season")} with every bed dug.</>
        ) : (
          <>
            In <strong>{chanceInWords(cheaperChance)}</strong> of {countOf(seasonCount, "sampled season")} these beds
            cost less than digging all
            {sameChance.share > 0 && <>, and in {inPercent(sameChance.share)} the same</>}. On average the season costs{" "}
            <strong>{inRoundMoney(Math.abs(differenceCents))}</strong> {differenceCents <= 0 ? "less" : "more"} (±{" "}
            {inRoundMoney(sureness.differenceStandardErrorCents)} standard error).
          </>
        )}
      </p>
      <Table
        caption="Focal stems short in the season"
        columns={SEASON_COLUMNS}
        rows={focalShortStems.map((band, index) => ({ name: index === 0 ? "Every bed dug" : "As ticked", ...band }))}
        keyOf={({ name }) => name}
        isNarrow
      />
      <p className="small soft">One season in ten stays below low, one in ten goes above high.</p>
      <BookingChances bookings={shown} isEarly={early.length > 0} />
    </>
  );
}

const BookingChances = ({ bookings, isEarly }: { bookings: readonly BookingSureness[]; isEarly: boolean }) => (
  <Table
    caption={`Chance that a booking is covered${isEarly ? ", June and July" : ""}`}
    columns={BOOKING_COLUMNS}
    rows={bookings}
    keyOf={({ bookingId }) => bookingId}
  />
);

const Change = ({ before, after }: { before: ObservedChance; after: ObservedChance }) => (
  <>
    <strong>{chanceInWords(after)}</strong>
    {isClearly(before, after) && (
      <span className={after.share > before.share ? "good-word" : "short-word"}>
        {after.share > before.share ? " better" : " worse"}
      </span>
    )}
  </>
);

/** Further apart than twice their standard errors together. */
const isClearly = (before: ObservedChance, after: ObservedChance): boolean =>
  Math.abs(after.share - before.share) > 2 * Math.hypot(before.standardError, after.standardError);
