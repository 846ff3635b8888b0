import { allOf } from "#lib/domain/listed";
import type { WinterBed } from "#lib/plan/winter/beds";
import { countOf } from "#lib/plan/words/numbers";
import { FlowerHeads } from "../look/flower-heads";

/** Beds whose flower heads are drawn; of more, a few are named in a line under them. */
const DRAWN_COUNT = 9;
const NAMED_COUNT = 6;

/** The beds of a choice as flower heads in their own colours, each with the bed's tag and its varieties. */
export function Specimens({ beds }: { beds: readonly WinterBed[] }) {
  const more = beds.slice(DRAWN_COUNT);
  return (
    <div className="plate">
      <FlowerHeads />
      <ul className="specimens">
        {beds.slice(0, DRAWN_COUNT).map((bed) => (
          <Specimen key={bed.bed.id} bed={bed} />
        ))}
      </ul>
      {more.length > 0 && <p className="small">and {allOf(named(more))}</p>}
    </div>
  );
}

const named = (beds: readonly WinterBed[]): string[] => {
  const names = beds.slice(0, NAMED_COUNT).map(({ bed }) => bed.name);
  const rest = beds.length - names.length;
  return rest > 0 ? [...names, countOf(rest, "more bed", "more beds")] : names;
};

function Specimen({ bed: { bed, plantings } }: { bed: WinterBed }) {
  const rows = plantings.map(({ kept }) => kept);
  const heads = rows.slice(0, 2);
  return (
    <li>
      <a href={`/beds/${bed.id}`}>
        <span className={`heads heads-${heads.length}`}>
          {heads.map(({ planting, variety, crop }) => (
            <svg key={planting.id} className={`gl f-${variety.colour}`} aria-hidden="true">
              <use href={/ball|pompon/i.test(crop.name) ? "#ball" : "#dahlia"} />
            </svg>
          ))}
        </span>
        <span className="bed-tag">{bed.name}</span>
        <span className="small">
          {rows.map(({ variety }) => variety.name).join(", ")}
          <br />
          {[...new Set(rows.map(({ variety }) => variety.colour))].join(", ")}
        </span>
      </a>
    </li>
  );
}
