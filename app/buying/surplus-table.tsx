import { inShort, toDay, weekInWords } from "#lib/domain/day";
import type { Surplus } from "#lib/plan/road/surplus";
import { surplusWeeks } from "#lib/plan/road/surplus-weeks";
import { ColourWord } from "../ui/colour-words";
import { inWholes } from "../ui/numbers";

const LEAST_STEMS = 20;

/** What nobody has claimed, week by week: what to offer before it is too late. Small lots are left out, and said so. */
export function SurplusTable({ surplus }: { surplus: readonly Surplus[] }) {
  const rows = surplusWeeks(surplus);
  const shown = rows.filter((row) => row.stems >= LEAST_STEMS);
  return (
    <section aria-labelledby="surplus">
      <h2 id="surplus">Surplus to offer</h2>
      <p className="soft">
        Stems by week and variety that no booking takes, {LEAST_STEMS} or more. Offer them three to seven days ahead
        (common practice).
      </p>
      {shown.length === 0 ? (
        <p>No surplus of {LEAST_STEMS} stems or more.</p>
      ) : (
        <details open={shown.length <= 30}>
          <summary>{inWholes(shown.length)} lots</summary>
          <table className="cards-on-phone">
            <thead>
              <tr>
                <th scope="col">Week</th>
                <th scope="col">Variety</th>
                <th scope="col" className="number">
                  Stems
                </th>
                <th scope="col">Of use until</th>
              </tr>
            </thead>
            <tbody>
              {shown.map(({ monday, crop, variety, stems, lastUsefulDay }) => (
                <tr key={`${monday} ${variety.id}`}>
                  <td data-label="Week">{weekInWords(toDay(monday))}</td>
                  <th scope="row">
                    {crop.name} {variety.name} <ColourWord colour={variety.colour} />
                  </th>
                  <td className="number" data-label="Stems">
                    {inWholes(stems)}
                  </td>
                  <td data-label="Of use until">{inShort(toDay(lastUsefulDay))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </section>
  );
}
