import { expect, test } from "vitest";
import { people } from "../trust/people/people";

test("[T10] whoever signs in, joins, is put out or trespasses, and wherever the server is killed: each count is in once under its counter's name, and no secret leaves the people's own file", async () => {
  const { faults, lines } = await people(0.01);
  expect(faults).toEqual([]);
  expect(lines).toHaveLength(4);
});
