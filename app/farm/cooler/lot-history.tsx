import type { Farm } from "#lib/domain/records/farm-settings";
import type { CoolerLot, LotEntry } from "#lib/plan/road/cooler";
import { entryInWords, lotInWords, sumInWords } from "#lib/plan/words/cooler-words";
import { Form } from "../../ui/form.client";
import type { Option } from "../../ui/form-fields.client";
import { deleteCoolerStock, takeBackMove } from "./cooler-actions";
import { CoolerForm } from "./cooler-form";

/** A lot and what its card must know beside it. `today` is a day number. */
export type LotOf = {
  lot: CoolerLot;
  farm: Farm;
  today: number;
  choices: readonly Option[];
  clientOf: (bookingId: number) => string;
};

/** How a lot came to what stands there, entry by entry, each with its way back: what was put in is changed or taken out of the records, what left is put back. */
export function LotHistory({ lot, ...of }: LotOf) {
  return (
    <details className="lot-history">
      <summary>{sumInWords(lot)}</summary>
      <ul className="done-rows">
        {lot.entries.map((entry) => (
          <li key={keyOf(entry)}>
            <span>{entryInWords(entry, of.clientOf)}</span>
            <WayBack entry={entry} lot={lot} {...of} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function WayBack({ entry, lot, farm, choices }: LotOf & { entry: LotEntry }) {
  if (entry.kind === "moved")
    return (
      <Form
        action={takeBackMove}
        submit="Take back"
        label={`Take back: ${entry.stems} ${entry.move.kind}, ${lotInWords(lot)}`}
        hidden={{ moveId: entry.move.id }}
        isQuiet
      />
    );
  if (entry.kind !== "put in") return null;
  const { stock } = entry;
  return (
    <details>
      <summary>Change or remove</summary>
      <CoolerForm choices={choices} farm={farm} stock={stock} label={`Change ${lotInWords(lot)}`} />
      <Form
        action={deleteCoolerStock}
        submit="Remove: it was never put in"
        hidden={{ stockId: stock.id }}
        label={`Remove ${lotInWords(lot)}`}
        isQuiet
      />
    </details>
  );
}

const keyOf = (entry: LotEntry): string => {
  if (entry.kind === "put in") return `put in ${entry.stock.id}`;
  if (entry.kind === "arrived") return `arrived ${entry.purchase.id}`;
  if (entry.kind === "cut") return `cut ${entry.cut.id}`;
  return entry.kind === "moved" ? `moved ${entry.move.id}` : `used ${entry.booking.id}`;
};
