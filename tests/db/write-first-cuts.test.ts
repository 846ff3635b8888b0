import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { changeFirstCut, keepFirstCuts, removeFirstCut } from "#db/write/first-cuts";
import type { FirstCutDraft } from "#lib/domain/records/first-cut";
import { day } from "../small-farm";
import { done, kept, refused, withFarm } from "./kept-farm";

const first = (given: Partial<FirstCutDraft> = {}): FirstCutDraft => ({
  ...{ cropId: 1, varietyId: null, treatment: "field", seasonYear: 2024, plantedOn: null },
  firstCut: day("2024-05-14"),
  ...given,
});

test("first cuts are kept once for each crop, variety, treatment, season and planting day: kept again, one takes the place of the first", () => {
  withFarm((database) => {
    const noted = done(keepFirstCuts(database, [first(), first({ seasonYear: 2025, firstCut: day("2025-05-20") })]));
    expect(noted.title).toBe("kept 2 first cuts of Crop 1");
    done(keepFirstCuts(database, [first({ firstCut: day("2024-05-16") }), first({ varietyId: 1 })]));
    done(keepFirstCuts(database, [first({ plantedOn: day("2024-03-01") }), first({ treatment: "tunnel" })]));
    expect(kept(database).firstCuts.map(({ id: _, cropId: __, ...row }) => Object.values(row).join())).toEqual([
      ",field,2024,,2024-05-16",
      ",field,2025,,2025-05-20",
      "1,field,2024,,2024-05-14",
      ",field,2024,2024-03-01,2024-05-14",
      ",tunnel,2024,,2024-05-14",
    ]);
    expect(kept(database).firstCuts[0].id).toBe(noted.result[0]);
  });
});

test("one is changed and taken away, refused where another says it already, and each is undone", () => {
  withFarm((database) => {
    const { result } = done(
      keepFirstCuts(database, [first(), first({ seasonYear: 2025, firstCut: day("2025-05-20") })]),
    );
    const before = kept(database);
    expect(refused(changeFirstCut(database, result[1], first()))).toEqual([
      "firstCut: this season and planting day have a first cut already: change that one",
    ]);
    const changed = done(changeFirstCut(database, result[1], first({ seasonYear: 2026, firstCut: day("2026-05-20") })));
    expect(changed.title).toBe("changed the first cut of Crop 1 on 2026-05-20");
    const removed = done(removeFirstCut(database, result[0]));
    expect(removed.title).toBe("removed the first cut of Crop 1 on 2024-05-14");
    expect(kept(database).firstCuts.map(({ firstCut }) => firstCut)).toEqual(["2026-05-20"]);
    for (const { changeId } of [removed, changed]) expect(undoChange(database, changeId ?? 0).ok).toBe(true);
    expect(kept(database)).toEqual(before);
    expect(refused(removeFirstCut(database, 99))).toEqual(["id: this first cut is not on the farm"]);
    expect(refused(keepFirstCuts(database, []))).toEqual([": there is no first cut to keep: write one a line"]);
    expect(refused(keepFirstCuts(database, [first({ cropId: 9 }), first({ varietyId: 9 })])).length).toBe(2);
  });
});

test("the table itself refuses a planting day after the first cut, and a second row of the same", () => {
  withFarm((database) => {
    const insert = (planted: string, cut: string) => () =>
      database.$client.exec(
        `INSERT INTO first_cut (crop_id, treatment, season_year, planted_on, first_cut) VALUES (1, 'field', 2024, ${planted}, '${cut}')`,
      );
    expect(insert("'2024-06-01'", "2024-05-14")).toThrow(/first_cut_planted_before/);
    insert("NULL", "2024-05-14")();
    expect(insert("NULL", "2024-05-15")).toThrow(/UNIQUE/);
  });
});
