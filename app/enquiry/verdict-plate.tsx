import { inWholes } from "#lib/plan/words/numbers";
import { unitFor, weekCells } from "../season/ribbon/cells";
import { StateSign } from "../ui/state-sign";
import type { AnswerView, NamedBooking, NamedLot } from "./answer/answer-view";

const MOST_HEADS = 24;
const HEADS_A_ROW = 12;
const PITCH = 46;

/** The answer: its word and number, the stems counted out, by name, and whether anybody loses by it. */
export function VerdictPlate({ view }: { view: AnswerView }) {
  const { head, rest, lots, losers, notPlanted, spare } = view;
  return (
    <section className="plate verdict" aria-labelledby="verdict">
      <h1 id="verdict">
        <span className="great">{head}</span>
        <span className="verdict-rest">{rest}</span>
      </h1>
      <Heads view={view} />
      {notPlanted && <p className="short-word">{notPlanted}</p>}
      {lots.length > 0 && <Lots lots={lots} />}
      {losers.length > 0 ? <Losers losers={losers} /> : lots.length > 0 && <NobodyLoses />}
      {spare && <p className="note">{spare}</p>}
    </section>
  );
}

/** Stems that are likely as flower heads in their colours, and a ring for each that is missing. */
function Heads({ view: { role, colours, needStems, likelyStems, stemCount } }: { view: AnswerView }) {
  const unit = unitFor(needStems, MOST_HEADS);
  const likelyNeedStems = colours.reduce((sum, { stems }) => sum + stems, 0);
  const { runs, cellCount } = weekCells(
    { needStems, shortStems: needStems - likelyNeedStems, covered: colours, unclaimed: [] },
    unit,
  );
  const marks = runs.flatMap(({ colour, count }) => Array.from({ length: count }, () => colour));
  const rows = Math.max(1, Math.ceil(cellCount / HEADS_A_ROW));
  // Rows of one length, so that none is left with a single head.
  const columns = Math.ceil(cellCount / rows);
  return (
    <figure className="verdict-heads">
      <svg
        width={columns * PITCH}
        height={rows * PITCH}
        viewBox={`0 0 ${columns * PITCH} ${rows * PITCH}`}
        role="img"
        aria-label={`${likelyStems} of ${stemCount} stems likely`}
      >
        {marks.map((colour, mark) => (
          <use
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark is known by its place
            key={mark}
            href={colour === "ring" ? "#ring" : `#r-${role}`}
            className={colour === "ring" ? undefined : `f-${colour}`}
            x={(mark % columns) * PITCH + 1}
            y={Math.floor(mark / columns) * PITCH + 1}
            width={PITCH - 2}
            height={PITCH - 2}
          />
        ))}
      </svg>
      <figcaption className="note">
        {unit === 1 ? "A stem each" : `${unit} stems each`}
        {marks.includes("ring") && "; a ring is short"}.
      </figcaption>
    </figure>
  );
}

const LOTS_SHOWN = 6;

/** The stems by name: variety and bed. */
const Lots = ({ lots }: { lots: readonly NamedLot[] }) => (
  <ul className="leaders verdict-lots" aria-label="Stems that would serve it">
    {lots.slice(0, LOTS_SHOWN).map((lot) => (
      <li key={`${lot.name} ${lot.place}`}>
        <span>
          <span className={`swatch f-${lot.colour}`} aria-hidden="true" />
          {lot.name}, {lot.bedId === null ? lot.place : <a href={`/beds/${lot.bedId}`}>{lot.place}</a>}
        </span>
        <span className="dots" />
        <b>{inWholes(lot.stems)}</b>
      </li>
    ))}
    {lots.length > LOTS_SHOWN && (
      <li>
        <span>from {lots.length - LOTS_SHOWN} more</span>
        <span className="dots" />
        <b>{inWholes(lots.slice(LOTS_SHOWN).reduce((sum, { stems }) => sum + stems, 0))}</b>
      </li>
    )}
  </ul>
);

const NobodyLoses = () => (
  <p className="state covered">
    <StateSign of="tick" />
    No other booking loses a stem by it.
  </p>
);

const Losers = ({ losers }: { losers: readonly NamedBooking[] }) => (
  <p className="state risk told">
    <StateSign of="risk" />
    <span>
      Held, it would take{" "}
      {losers.map(({ id, client, stems }, index) => (
        <span key={id}>
          {index > 0 && ", "}
          {inWholes(stems)} from <a href={`/bookings/${id}`}>{client}</a>
        </span>
      ))}
      ; these are not counted.
    </span>
  </p>
);
