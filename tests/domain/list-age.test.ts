import { expect, test } from "vitest";
import { clockInWords } from "#lib/domain/list-age";

test("a time of today is said as a time, another with its day", () => {
  expect(clockInWords("2027-06-10T06:40", "2027-06-10T07:00")).toBe("06:40");
  expect(clockInWords("2027-06-09T18:05", "2027-06-10T07:00")).toBe("Wed 9 Jun, 18:05");
});
