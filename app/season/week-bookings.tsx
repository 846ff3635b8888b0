import { toDay, withWeekday } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "#lib/plan/road/plan";
import { seasonOfBooking } from "#lib/plan/road/seasons";
import type { Week } from "#lib/plan/road/weeks";
import { inWholes } from "#lib/plan/words/numbers";
import { PaletteStrip } from "../ui/palette-strip";
import { type Column, Table } from "../ui/table";

type Stems = { readonly needStems: number; readonly shortStems: number };
type Row = { readonly booking: Plan["match"]["needs"][number]["booking"]; readonly roles: ReadonlyMap<Role, Stems> };

/** The bookings of a week by role: what each needs and what of it is short, and the week's sums at the foot. */
export function WeekBookings({ plan, week }: { plan: Plan; week: Week }) {
  const rows = bookingRows(plan, week);
  const roles = ROLES.filter((role) => week.roles[ROLES.indexOf(role)].needStems > 0);
  const columns: Column<Row>[] = [
    {
      head: "Booking",
      kind: "name",
      foot: "The week",
      cell: ({ booking }) => (
        <>
          <a href={`/bookings/${booking.id}`}>{booking.client}</a>
          {booking.status !== "confirmed" && `, ${booking.status}`}{" "}
          <small>
            {withWeekday(booking.eventOn)} <PaletteStrip colours={booking.palette} />
          </small>
        </>
      ),
    },
    ...roles.map((role): Column<Row> => {
      const { needStems, shortStems } = week.roles[ROLES.indexOf(role)];
      return {
        head: role,
        kind: "number",
        foot: <NeedAndShort needStems={needStems} shortStems={shortStems} />,
        cell: (row) => {
          const stems = row.roles.get(role);
          return stems && <NeedAndShort {...stems} />;
        },
      };
    }),
    {
      head: "In all",
      kind: "number",
      foot: <NeedAndShort {...sumOf(week.roles)} />,
      cell: ({ roles: of }) => <NeedAndShort {...sumOf([...of.values()])} />,
    },
  ];
  return (
    <Table
      caption="Stems needed and short, by booking and role"
      isCaptionHidden
      className="week-bookings"
      columns={columns}
      rows={rows}
      keyOf={({ booking }) => booking.id}
    />
  );
}

const NeedAndShort = ({ needStems, shortStems }: Stems) => (
  <>
    {inWholes(needStems)}
    {shortStems > 0 && <span className="short-word short-below">{inWholes(shortStems)} short</span>}
  </>
);

const sumOf = (all: readonly Stems[]): Stems => ({
  needStems: all.reduce((sum, { needStems }) => sum + needStems, 0),
  shortStems: all.reduce((sum, { shortStems }) => sum + shortStems, 0),
});

function bookingRows({ match, seasonYear }: Plan, { bookingIds, monday }: Week): Row[] {
  const rows = new Map<number, { booking: Row["booking"]; roles: Map<Role, Stems> }>();
  match.needs.forEach(({ booking, role, stems, eventDay }, index) => {
    if (!bookingIds.includes(booking.id) || seasonOfBooking(booking) !== seasonYear || toDay(eventDay) < monday) return;
    const row = rows.get(booking.id) ?? { booking, roles: new Map<Role, Stems>() };
    rows.set(booking.id, row);
    const known = row.roles.get(role);
    row.roles.set(role, {
      needStems: (known?.needStems ?? 0) + stems,
      shortStems: (known?.shortStems ?? 0) + match.shortStems[index],
    });
  });
  return [...rows.values()].sort((a, b) => (a.booking.eventOn < b.booking.eventOn ? -1 : 1));
}
