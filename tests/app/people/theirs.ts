/** What each may do, written down a second time and by hand: who widens the table has to say so here as well. */
const HELPER_ROUTES = [
  "/beds/buds",
  "/calendar/[key]",
  "/changes",
  "/farm/cooler",
  "/field-worker",
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
const DESIGNER_ROUTES = [
  "/beds",
  "/beds/[id]",
  "/bench",
  "/bookings",
  "/bookings/[id]",
  "/bookings/coverage",
  "/bookings/new",
  "/bookings/review",
  "/calendar/[key]",
  "/changes",
  "/dates",
  "/enquiry",
  "/enquiry/answer",
  "/join/[code]",
  "/not-yours",
  "/sign-in",
];
const STRANGER_ROUTES = ["/calendar/[key]", "/join/[code]", "/sign-in"];
const STRANGER_ACTIONS = ["chooseTheme", "join", "signIn"];
const SIGNED_IN_ACTIONS = [...STRANGER_ACTIONS, "chooseSeason", "signOut", "undo"];
const HELPER_ACTIONS = [
  ...SIGNED_IN_ACTIONS,
  "clearPast",
  "correctCut",
  "deleteCoolerStock",
  "moveStems",
  "noteBuds",
  "noteFrost",
  "noteLoss",
  "receivePurchases",
  "saveCoolerStock",
  "saveCut",
  "settleCount",
  "takeBackCut",
  "takeBackFrost",
  "takeBackLoss",
  "takeBackMove",
];
const DESIGNER_ACTIONS = [
  ...SIGNED_IN_ACTIONS,
  "changeStatus",
  "deleteBooking",
  "giveLapses",
  "holdEnquiry",
  "openFinalCount",
  "promiseAllCovered",
  "promiseCovered",
  "readPasted",
  "rememberColour",
  "reopenBooking",
  "saveBooking",
  "saveReview",
  "takeBackReview",
  "takeFinalCount",
];

/** Of each role, and of who is not signed in, with the page that they begin on. */
export const THEIRS = {
  helper: { routes: HELPER_ROUTES, actions: HELPER_ACTIONS, home: "/today" },
  designer: { routes: DESIGNER_ROUTES, actions: DESIGNER_ACTIONS, home: "/bookings" },
  stranger: { routes: STRANGER_ROUTES, actions: STRANGER_ACTIONS, home: "/sign-in" },
} as const;
