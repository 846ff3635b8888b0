import type { Farm } from "#lib/domain/records/farm-settings";
import type { FirstFigures as Moved } from "#lib/plan/what-if/first-figures";
import {
  type FirstFigureWords,
  frostMoves,
  spareMoves,
  survivalMoves,
  wageMoves,
} from "#lib/plan/words/first-figure-words";
import { FigureFold } from "./figure-fold.client";
import { FigureForm } from "./figure-line";
import { figureOf, inOneWord } from "./figure-of";

type Props = { farm: Farm; moved: Moved; payingBedCount: number | null };

/** The four figures to set first, each with what it moves on this farm. */
export const FirstFigures = ({ farm, moved, payingBedCount }: Props) => (
  <ul className="plate first-figures">
    <First
      name="winter.winterSurvivalShare"
      title="Clumps alive in spring"
      farm={farm}
      words={survivalMoves(moved, farm, payingBedCount)}
    />
    <First name="frost.firstAutumnP50" title="First frost of autumn" farm={farm} words={frostMoves(moved, farm)} />
    <First name="winter.wageCentsPerHour" title="An hour of work" farm={farm} words={wageMoves(moved, farm)} />
    <First name="spareShare" title="Spare of a booking" farm={farm} words={spareMoves(moved)} />
  </ul>
);

function First({ name, title, farm, words }: { name: string; title: string; farm: Farm; words: FirstFigureWords }) {
  const figure = figureOf(name, farm);
  const { before, shown, unit } = figure;
  return (
    <li>
      <FigureFold
        className="first-figure"
        saved={inOneWord(figure)}
        summary={
          <>
            <span>{title}</span>
            <span className="first-number">
              {before}
              <b>{shown}</b> {unit}
            </span>
          </>
        }
      >
        <FigureForm figure={figure} hint="" />
      </FigureFold>
      <p className="note">{words.why}</p>
      <p className="note moves">{words.moves}</p>
    </li>
  );
}
