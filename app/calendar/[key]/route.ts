import { calendarFile } from "#lib/sheets/calendar";
import { now } from "../../clock";
import { download } from "../../download";
import { seasonYear } from "../../frame/season-year";
import { loadPlan } from "../../load";
import { openFarm } from "../../people/who";

type Props = { readonly params: Promise<{ readonly key: string }> };

/** The calendar of the season for a program that reads it again and again, by an address that is its own key. It says what a helper may know. */
export async function GET(_: Request, { params }: Props): Promise<Response> {
  const { key } = await params;
  if (openFarm()?.people.isCalendar(key)) return given();
  return new Response("There is no calendar at this address.\n", { status: 404 });
}

const given = download(
  async () =>
    new Response(calendarFile(loadPlan(await seasonYear()), now()), {
      headers: { "content-type": "text/calendar; charset=utf-8", "cache-control": "no-store" },
    }),
);
