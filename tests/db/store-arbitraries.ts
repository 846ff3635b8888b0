import fc from "fast-check";
import { anyMove, anyPurchase } from "../any-store-records";
import { day, name } from "./arbitraries";

/** Ids are places in a list, to be looked up with `among`. */
const PLACES = { day, varietyId: fc.nat(), bookingId: fc.nat() };

export const moveDraft = anyMove(PLACES);
export const purchaseDraft = anyPurchase(PLACES, name);
