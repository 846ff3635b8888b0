"use server";

import { putFigures } from "#db/write/figures";
import { changeFirstCut, keepFirstCuts, removeFirstCut } from "#db/write/first-cuts";
import { action, idIn, refusal } from "../../../action";
import { whyUnread } from "../../../download";
import { loadFarm } from "../../../load";
import { FormValues } from "../../../ui/form-values";
import { changedFirstCut, typedFirstCuts } from "./kept-values";
import { type Lesson, lessonOf } from "./lesson";

/** Looks at first cuts; writes nothing. */
export async function learnFirstCuts(_: null, form: FormData): Promise<Lesson> {
  const because = whyUnread();
  if (because !== null) return { ok: false, because, leftOut: [] };
  const values = new FormValues(form);
  return lessonOf(loadFarm(), values.hiddenNumber("curve"), values.text("dates"));
}

/** Takes what the same first cuts propose into the curve: the clock of warmth, or the mean day. */
export const adoptLesson = action(
  (values, farm) => {
    const lesson = lessonOf(farm, values.hiddenNumber("curve"), values.text("dates"));
    if (!lesson.ok) return refusal("dates", lesson.because);
    const curve = values.text("choice") === "clock" ? lesson.byClock : lesson.byMean;
    return curve
      ? { ok: true, parsed: curve }
      : refusal("choice", "no clock of warmth is proposed any more: look again");
  },
  (database, curve, { crops }) => {
    const name = crops.find(({ id }) => id === curve.cropId)?.name ?? "a crop";
    return putFigures(database, `learned the first cut of ${name} from records`, {
      crops: [],
      curves: [curve],
      recipes: [],
    });
  },
);

/** Keeps first cuts as they were typed, so that next year adds to them. */
export const keepTyped = action(
  (values, farm) => typedFirstCuts(farm, values.hiddenNumber("curve"), values.text("dates")),
  keepFirstCuts,
);

/** Changes the days of a first cut that was kept. */
export const saveFirstCut = action(changedFirstCut, (database, { id, draft }) => changeFirstCut(database, id, draft));

/** Takes a first cut that was kept away. */
export const deleteFirstCut = action(idIn("firstCutId"), removeFirstCut);
