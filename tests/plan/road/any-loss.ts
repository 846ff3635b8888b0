import type { Loss } from "#lib/domain/records/loss";
import { day } from "../../small-farm";

/** Half of 70 plants eaten by voles on 10 June. */
export const loss = (given: Partial<Loss> = {}): Loss => ({
  ...{ id: 1, seenOn: day("2027-06-10"), bedId: 1, varietyId: 1 },
  ...{ cause: "voles", plantsBefore: 70, plantsLeft: 35 },
  ...given,
});
