import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "crop,variety,treatment,season,planted_on,first_cut\n";

test("kept first cuts are read by the names of crop and variety, with and without a planting day", () => {
  const { problems, records } = read({
    "firsts.csv": `${HEAD}Dahlia,,spring-planted,2024,2024-06-01,2024-08-30\nDahlia,Maple Row,field,2025,,2025-06-02\n`,
  });
  expect(problems).toEqual([]);
  expect(records.firstCuts).toEqual([
    {
      ...{ crop: "Dahlia", variety: null, treatment: "spring-planted", seasonYear: 2024 },
      ...{ plantedOn: "2024-06-01", firstCut: "2024-08-30" },
    },
    {
      ...{ crop: "Dahlia", variety: "Maple Row", treatment: "field", seasonYear: 2025 },
      ...{ plantedOn: null, firstCut: "2025-06-02" },
    },
  ]);
});

test("an unknown crop or variety, no calendar day, a planting day after the first cut, or a second row of the same says so", () => {
  expect(
    problemLines({
      "firsts.csv": [
        HEAD.trim(),
        "Dalhia,,field,2024,,2024-06-02",
        "Dahlia,Maple Rue,field,2024,,2024-06-02",
        "Dahlia,,field,2024,,2024-06-31",
        "Dahlia,,field,2023,2023-07-01,2023-06-02",
        "Dahlia,,field,2025,,2025-06-02",
        "Dahlia,,field,2025,,2025-06-05",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual([
    "firsts.csv:2 crop",
    "firsts.csv:3 variety",
    "firsts.csv:4 first_cut",
    "firsts.csv:5 planted_on",
    "firsts.csv:7 first_cut",
  ]);
});
