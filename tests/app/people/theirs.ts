/** What each may do, written down a second time and by hand: who widens the table has to say so here as well. */
export const HELPER_ROUTES = [
  "/beds/buds",
  "/calendar/[key]",
  "/changes",
  "/farm/cooler",
  "/join/[code]",
  "/not-yours",
  "/picking",
  "/picking/calendar",
  "/picking/csv",
  "/picking/labels",
  "/picking/print",
  "/sign-in",
  "/today",
  "/today/tallies",
];
export const DESIGNER_ROUTES = [
  "/beds",
  "/beds/[id]",
  "/bookings",
  "/bookings/[id]",
  "/bookings/coverage",
  "/bookings/new",
  "/calendar/[key]",
  "/changes",
  "/dates",
  "/enquiry",
  "/enquiry/answer",
  "/join/[code]",
  "/not-yours",
  "/sign-in",
];
export const STRANGER_ROUTES = ["/calendar/[key]", "/join/[code]", "/sign-in"];
export const STRANGER_ACTIONS = ["chooseTheme", "join", "signIn"];
const SIGNED_IN_ACTIONS = [...STRANGER_ACTIONS, "chooseSeason", "signOut", "undo"];
export const HELPER_ACTIONS = [
  ...SIGNED_IN_ACTIONS,
  "clearPast",
  "correctCut",
  "deleteCoolerStock",
  "moveStems",
  "noteBuds",
  "receivePurchases",
  "saveCoolerStock",
  "saveCut",
  "settleCount",
  "takeBackCut",
  "takeBackMove",
];
export const DESIGNER_ACTIONS = [
  ...SIGNED_IN_ACTIONS,
  "changeStatus",
  "deleteBooking",
  "giveLapses",
  "holdEnquiry",
  "promiseAllCovered",
  "promiseCovered",
  "readPasted",
  "rememberColour",
  "reopenBooking",
  "saveBooking",
];
