import type { Farm } from "#lib/domain/records/farm-settings";
import { mayOpen } from "../people/allowed";
import { roleNow } from "../people/who";
import { chooseSeason } from "./season-action";

type Props = { title: string; seasonYear: number; back: string; id?: string };

/** The heading of a screen that shows one season, and the step to the season before or after. */
export const SeasonHead = ({ title, seasonYear, back, id }: Props) => (
  <div className="row apart">
    <h1 id={id}>{title}</h1>
    <SeasonSwitch seasonYear={seasonYear} back={back} />
  </div>
);

/** The same of a screen that looks back: the season stands in its address, and no other screen changes with it. */
export const SeasonHeadByAddress = ({
  title,
  seasonYear,
  path,
}: Pick<Props, "title" | "seasonYear"> & { path: string }) => (
  <div className="row apart">
    <h1>{title}</h1>
    <nav className="row no-print" aria-label="Season shown">
      <a className="button" href={`${path}?season=${seasonYear - 1}`}>
        ← {seasonYear - 1}
      </a>
      <strong>Season {seasonYear}</strong>
      <a className="button" href={`${path}?season=${seasonYear + 1}`}>
        {seasonYear + 1} →
      </a>
    </nav>
  </div>
);

/** A quiet line with the season shown, above a screen whose heading is its answer; of an invented farm it says so. */
export const SeasonLine = ({ farm, seasonYear, back }: Pick<Props, "seasonYear" | "back"> & { farm: Farm }) => (
  <div className="row apart season-line">
    <p className="small">
      {farm.isInvented && (
        <>
          An invented farm with invented clients, to look around in.{" "}
          {mayOpen(roleNow(), "/farm") && <a href="/farm#start">Start my own farm</a>}
        </>
      )}
    </p>
    <SeasonSwitch seasonYear={seasonYear} back={back} />
  </div>
);

function SeasonSwitch({ seasonYear, back }: Pick<Props, "seasonYear" | "back">) {
  return (
    <form action={chooseSeason} className="row no-print" aria-label="Season shown">
      <input type="hidden" name="back" value={back} />
      <button type="submit" name="season" value={seasonYear - 1}>
        ← {seasonYear - 1}
      </button>
      <strong>Season {seasonYear}</strong>
      <button type="submit" name="season" value={seasonYear + 1}>
        {seasonYear + 1} →
      </button>
    </form>
  );
}
