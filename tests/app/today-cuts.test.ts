import { expect, test } from "vitest";
import { cutsOfRow } from "../../app/today/cut-values";
import { FormValues } from "../../app/ui/form-values";

const formOf = (asked: readonly (readonly [number, number])[], stemsCut: string) => {
  const form = new FormData();
  for (const [name, typed] of Object.entries({ cutOn: "2027-06-10", bedId: "1", varietyId: "1", stemsCut }))
    form.set(name, typed);
  form.set("asked", JSON.stringify(asked));
  return new FormValues(form);
};

test("a row that a standing order shares is recorded for its wedding, and the order's part without a booking", () => {
  const read = cutsOfRow(
    formOf(
      [
        [3, 5],
        [-7, 4],
      ],
      "9",
    ),
  );
  expect(
    read.ok && read.parsed.map(({ bookingId, stemsCut, stemsAsked }) => [bookingId, stemsCut, stemsAsked]),
  ).toEqual([
    [3, 5, 5],
    [null, 4, 4],
  ]);
});
