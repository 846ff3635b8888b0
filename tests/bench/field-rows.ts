import { farmWithPeople } from "../browser/farm-with-people";
import { openBrowser } from "../browser/open-page";
import { fiftyPeople, followed } from "./people-in-the-field";
import { soonUsable, weighed } from "./slow-phone";
import { type BenchRow, rowOf, withTail } from "./timing";

/**
 * What a helper's phone takes over the farm's network, how soon it is of use on a slow one, how soon other screens follow what is counted, and how soon
 * fifty are answered while twenty count. Bounded: some hundred pages and a thousand requests, on an address of this machine.
 */
export async function fieldRows(): Promise<{ rows: BenchRow[]; lines: string[] }> {
  const farm = await farmWithPeople("2027-06-10");
  const browser = await openBrowser();
  try {
    const owner = await farm.ownersPhone(browser);
    const helper = await farm.helpersPhone(browser, owner, "Wren");
    const cookies = await helper.context().cookies();
    const lines = await weighed(browser, farm.address, cookies);
    const usable = await soonUsable(browser, farm.address, cookies);
    const follows = await followed(browser, farm.address, owner, helper);
    const { ticks, pages } = await fiftyPeople(farm.address, helper);
    return {
      rows: [
        rowOf(
          "Today on a slow phone, first visit: until a row stands there and can be saved",
          usable.shown,
          "3,000 ms",
        ),
        rowOf("the same: until it counts without signal", usable.first, ""),
        rowOf("Today on a slow phone afterwards: until it counts without signal", usable.afterwards, "3,000 ms"),
        ...follows.map(({ name, times }) => rowOf(`a count on one phone, seen on another: ${name}`, times, "1,000 ms")),
        withTail("fifty people in the field, twenty counting: a count is taken", ticks, "300 ms", "demo farm"),
        withTail("fifty people in the field, twenty counting: the list made anew", pages, "300 ms", "demo farm"),
      ],
      lines,
    };
  } finally {
    await browser.close();
    await farm.end();
  }
}
