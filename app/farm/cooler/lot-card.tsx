import { toDay, withWeekday } from "#lib/domain/day";
import { isDelivery } from "#lib/plan/road/orders";
import { couldServeInWords, eventInWords, lastUseInWords, lotInWords } from "#lib/plan/words/cooler-words";
import { inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { moveStems } from "./cooler-actions";
import { LotHistory, type LotOf } from "./lot-history";
import { MoveForm } from "./move-form.client";

/** A lot as it stands: how many, until when, for whom with a button each, and what else was taken out or thrown away. */
export function LotCard({ lot, ...of }: LotOf) {
  const { variety, crop, cutDay, leftStems, claims } = lot;
  const name = lotInWords(lot);
  return (
    <li className="card lot">
      <h3 className="row apart">
        <span className="lot-name">
          <svg className={`gl f-${variety.colour}`} width="28" height="28" aria-hidden="true">
            <use href={`#r-${crop.usualRole}`} />
          </svg>
          {crop.name} {variety.name}
        </span>
        <b className="cut-count">{inWholes(leftStems)}</b>
      </h3>
      <p className="small">
        <ColourWord colour={variety.colour} />, cut {withWeekday(toDay(cutDay))}; <b>{lastUseInWords(lot, of.today)}</b>
      </p>
      {claims.map(({ booking, stems }) => (
        <div key={booking.id} className="lot-claim">
          <span>
            {inWholes(stems)} for {eventInWords(booking)}
          </span>
          <Form
            action={moveStems}
            submit={`Take ${inWholes(stems)} out`}
            label={`Take ${stems} ${name} out for ${booking.client}`}
            hidden={{
              varietyId: variety.id,
              cutOn: toDay(cutDay),
              bookingId: isDelivery(booking) ? "" : booking.id,
              stemCount: stems,
              kind: "taken out",
            }}
            isQuiet
          />
        </div>
      ))}
      {claims.length === 0 && <p className="small">{couldServeInWords(lot, of.farm.leadDays)}</p>}
      <MoveForm key={leftStems} varietyId={variety.id} cutOn={toDay(cutDay)} name={name} stems={leftStems} />
      <LotHistory lot={lot} {...of} />
    </li>
  );
}
