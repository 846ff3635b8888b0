import { chooseSeason } from "./season-action";

/** Steps every screen to the season before or after. */
export function SeasonSwitch({ seasonYear, back }: { seasonYear: number; back: string }) {
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
