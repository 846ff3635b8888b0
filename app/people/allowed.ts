import { isPlainFile } from "./plain-files";

/** Whom the door tells apart. The owner may all. */
export type Role = "owner" | "helper" | "designer" | "stranger";
type Beside = readonly Exclude<Role, "owner">[];

const OWNER_ALONE: Beside = [];
const HELPER: Beside = ["helper"];
const DESIGNER: Beside = ["designer"];
const SIGNED_IN: Beside = ["helper", "designer"];
const EVERYBODY: Beside = ["helper", "designer", "stranger"];

/** Every page and route of the tool, and who beside the owner may open it. What is not here is open to nobody but the owner. */
export const ROUTES: Readonly<Record<string, Beside>> = {
  "/": OWNER_ALONE,
  "/beds": DESIGNER,
  "/beds/[id]": DESIGNER,
  "/beds/buds": HELPER,
  "/beds/grid": OWNER_ALONE,
  "/bench": DESIGNER,
  "/bookings": DESIGNER,
  "/bookings/[id]": DESIGNER,
  "/bookings/coverage": DESIGNER,
  "/bookings/new": DESIGNER,
  "/bookings/review": DESIGNER,
  "/bookings/season": OWNER_ALONE,
  "/bookings/season/csv": OWNER_ALONE,
  "/buying": OWNER_ALONE,
  "/buying/csv": OWNER_ALONE,
  "/buying/offers": OWNER_ALONE,
  "/buying/offers/csv": OWNER_ALONE,
  "/buying/order": OWNER_ALONE,
  "/calendar/[key]": EVERYBODY,
  "/changes": SIGNED_IN,
  "/dates": DESIGNER,
  "/enquiry": DESIGNER,
  "/enquiry/answer": DESIGNER,
  "/farm": OWNER_ALONE,
  "/farm/cooler": HELPER,
  "/farm/copies": OWNER_ALONE,
  "/farm/copies/[name]": OWNER_ALONE,
  "/farm/crops": OWNER_ALONE,
  "/farm/crops/[id]": OWNER_ALONE,
  "/farm/crops/new": OWNER_ALONE,
  "/farm/files": OWNER_ALONE,
  "/farm/files/all": OWNER_ALONE,
  "/farm/files/sheet/[name]": OWNER_ALONE,
  "/farm/files/workbook": OWNER_ALONE,
  "/farm/history": OWNER_ALONE,
  "/farm/people": OWNER_ALONE,
  "/farm/recipes": OWNER_ALONE,
  "/farm/recipes/[id]": OWNER_ALONE,
  "/farm/recipes/new": OWNER_ALONE,
  "/farm/weather": OWNER_ALONE,
  "/farm/weather/learn": OWNER_ALONE,
  "/farm/what-changed": OWNER_ALONE,
  "/farm/what-changed/effects": OWNER_ALONE,
  "/farm/winter": OWNER_ALONE,
  "/farm/year-end": OWNER_ALONE,
  "/join/[code]": EVERYBODY,
  "/keep-or-dig": OWNER_ALONE,
  "/keep-or-dig/choose": OWNER_ALONE,
  "/keep-or-dig/stop": OWNER_ALONE,
  "/keep-or-dig/sure": OWNER_ALONE,
  "/keep-or-dig/try": OWNER_ALONE,
  "/keep-or-dig/worksheet": OWNER_ALONE,
  "/keep-or-dig/worksheet/calendar": OWNER_ALONE,
  "/keep-or-dig/worksheet/csv": OWNER_ALONE,
  "/keep-or-dig/worths": OWNER_ALONE,
  "/field-worker": HELPER,
  "/not-yours": SIGNED_IN,
  "/orders": OWNER_ALONE,
  "/picking": HELPER,
  "/picking/calendar": HELPER,
  "/picking/csv": HELPER,
  "/picking/labels": HELPER,
  "/picking/print": HELPER,
  "/sign-in": EVERYBODY,
  "/today": HELPER,
  "/today/tallies": HELPER,
  "/weeks/[week]": OWNER_ALONE,
  "/what-if": OWNER_ALONE,
  "/what-if/[id]": OWNER_ALONE,
};

/** Every server action, by its file in `app` and its name there, and who beside the owner may call it. */
export const ACTIONS: Readonly<Record<string, Beside>> = {
  "beds/actions.ts#carryOver": OWNER_ALONE,
  "beds/actions.ts#deleteBed": OWNER_ALONE,
  "beds/actions.ts#saveBed": OWNER_ALONE,
  "beds/buds/bud-actions.ts#noteBuds": HELPER,
  "beds/curves/curve-actions.ts#restoreCurve": OWNER_ALONE,
  "beds/curves/curve-actions.ts#saveCurve": OWNER_ALONE,
  "beds/plantings/planting-actions.ts#deletePlanting": OWNER_ALONE,
  "beds/plantings/planting-actions.ts#keepOrDig": OWNER_ALONE,
  "beds/plantings/planting-actions.ts#savePlanting": OWNER_ALONE,
  "bookings/actions.ts#changeStatus": DESIGNER,
  "bookings/actions.ts#deleteBooking": DESIGNER,
  "bookings/actions.ts#saveBooking": DESIGNER,
  "bookings/editor/own-colour-action.ts#rememberColour": DESIGNER,
  "bookings/editor/pasted-action.ts#readPasted": DESIGNER,
  "bookings/lapses/lapse-actions.ts#giveLapses": DESIGNER,
  "bookings/lapses/lapse-actions.ts#reopenBooking": DESIGNER,
  "bookings/promises/promise-actions.ts#promiseAllCovered": DESIGNER,
  "bookings/promises/promise-actions.ts#promiseCovered": DESIGNER,
  "bookings/review/review-actions.ts#adoptRecipe": OWNER_ALONE,
  "bookings/review/review-actions.ts#adoptSpare": OWNER_ALONE,
  "bookings/review/review-actions.ts#saveReview": DESIGNER,
  "bookings/review/review-actions.ts#takeBackReview": DESIGNER,
  "buying/placed/purchase-actions.ts#addPurchase": OWNER_ALONE,
  "buying/placed/purchase-actions.ts#cancelPurchase": OWNER_ALONE,
  "buying/placed/purchase-actions.ts#placeOrder": OWNER_ALONE,
  "buying/placed/purchase-actions.ts#receivePurchases": HELPER,
  "buying/placed/purchase-actions.ts#savePurchase": OWNER_ALONE,
  "buying/placed/purchase-actions.ts#takeBackReceived": OWNER_ALONE,
  "enquiry/actions.ts#holdEnquiry": DESIGNER,
  "farm/cooler/cooler-actions.ts#clearPast": HELPER,
  "farm/cooler/cooler-actions.ts#deleteCoolerStock": HELPER,
  "farm/cooler/cooler-actions.ts#moveStems": HELPER,
  "farm/cooler/cooler-actions.ts#saveCoolerStock": HELPER,
  "farm/cooler/cooler-actions.ts#takeBackMove": HELPER,
  "farm/copies/copy-actions.ts#deleteCopy": OWNER_ALONE,
  "farm/copies/copy-actions.ts#restore": OWNER_ALONE,
  "farm/copies/copy-actions.ts#saveSecondPlace": OWNER_ALONE,
  "farm/copies/copy-actions.ts#takeOne": OWNER_ALONE,
  "farm/crops/crop-actions.ts#deleteCrop": OWNER_ALONE,
  "farm/crops/crop-actions.ts#deleteVariety": OWNER_ALONE,
  "farm/crops/crop-actions.ts#restoreCrop": OWNER_ALONE,
  "farm/crops/crop-actions.ts#saveCrop": OWNER_ALONE,
  "farm/crops/crop-actions.ts#saveVariety": OWNER_ALONE,
  "farm/figures/figure-actions.ts#saveFigure": OWNER_ALONE,
  "farm/files/actions.ts#bringIn": OWNER_ALONE,
  "farm/people/people-actions.ts#end": OWNER_ALONE,
  "farm/people/people-actions.ts#endCalendar": OWNER_ALONE,
  "farm/people/people-actions.ts#hire": OWNER_ALONE,
  "farm/people/people-actions.ts#invite": OWNER_ALONE,
  "farm/people/people-actions.ts#newCalendar": OWNER_ALONE,
  "farm/people/people-actions.ts#signOutEverywhere": OWNER_ALONE,
  "farm/recipes/recipe-actions.ts#deleteRecipe": OWNER_ALONE,
  "farm/recipes/recipe-actions.ts#saveRecipe": OWNER_ALONE,
  "farm/settings/settings-actions.ts#removeClimate": OWNER_ALONE,
  "farm/settings/settings-actions.ts#saveClimate": OWNER_ALONE,
  "farm/settings/settings-actions.ts#startOwnFarm": OWNER_ALONE,
  "farm/settings/settings-actions.ts#takeStationClimate": OWNER_ALONE,
  "farm/settings/settings-actions.ts#takeStationFrost": OWNER_ALONE,
  "farm/weather/learn/learn-actions.ts#adoptLesson": OWNER_ALONE,
  "farm/weather/learn/learn-actions.ts#learnFirstCuts": OWNER_ALONE,
  "farm/weather/weather-actions.ts#compareWeather": OWNER_ALONE,
  "farm/weather/weather-actions.ts#removeAllWeather": OWNER_ALONE,
  "farm/weather/weather-actions.ts#saveWeather": OWNER_ALONE,
  "farm/weather/weather-actions.ts#takeRecordedClimate": OWNER_ALONE,
  "farm/weather/weather-actions.ts#takeRecordedFrost": OWNER_ALONE,
  "farm/what-changed/figure-actions.ts#keepFigures": OWNER_ALONE,
  "farm/what-changed/figure-actions.ts#takeFigures": OWNER_ALONE,
  "farm/what-changed/missing-curve-actions.ts#addMissingCurves": OWNER_ALONE,
  "farm/what-changed/winter-figure-actions.ts#keepWinterFigures": OWNER_ALONE,
  "farm/what-changed/winter-figure-actions.ts#takeWinterFigures": OWNER_ALONE,
  "farm/year-end/year-end-actions.ts#takeProposal": OWNER_ALONE,
  "frame/put-file-back-action.ts#putFileBack": OWNER_ALONE,
  "frame/season-action.ts#chooseSeason": SIGNED_IN,
  "frame/start-here-actions.ts#startDemoHere": OWNER_ALONE,
  "frame/start-here-actions.ts#startOwnHere": OWNER_ALONE,
  "frame/theme-action.ts#chooseTheme": EVERYBODY,
  "frame/undo-action.ts#undo": SIGNED_IN,
  "join/[code]/join-action.ts#join": EVERYBODY,
  "keep-or-dig/actions.ts#adoptBeds": OWNER_ALONE,
  "keep-or-dig/actions.ts#saveAsWhatIf": OWNER_ALONE,
  "keep-or-dig/worksheet/count-action.ts#recordCount": OWNER_ALONE,
  "orders/order-actions.ts#deleteOrder": OWNER_ALONE,
  "orders/order-actions.ts#saveOrder": OWNER_ALONE,
  "season/own-season-actions.ts#followSeason": OWNER_ALONE,
  "season/own-season-actions.ts#saySeason": OWNER_ALONE,
  "sign-in/sign-in-action.ts#signIn": EVERYBODY,
  "sign-in/sign-out-action.ts#signOut": SIGNED_IN,
  "today/frost-actions.ts#saveColdNight": OWNER_ALONE,
  "today/today-actions.ts#correctCut": HELPER,
  "today/today-actions.ts#saveCut": HELPER,
  "today/today-actions.ts#settleCount": HELPER,
  "today/today-actions.ts#takeBackCut": HELPER,
  "what-if/actions.ts#deleteWhatIf": OWNER_ALONE,
  "what-if/actions.ts#makeWhatIf": OWNER_ALONE,
  "what-if/actions.ts#renameWhatIf": OWNER_ALONE,
  "what-if/adopt/adopt-action.ts#adopt": OWNER_ALONE,
  "what-if/suppose/change-actions.ts#addChange": OWNER_ALONE,
  "what-if/suppose/change-actions.ts#takeChangeOut": OWNER_ALONE,
  "what-if/suppose/change-actions.ts#toggleBed": OWNER_ALONE,
};

/** The pattern in {@link ROUTES} that a path falls under; null when it falls under none. A name that stands as it is goes before one in brackets. */
export function routeOf(path: string): string | null {
  if (Object.hasOwn(ROUTES, path)) return path;
  const steps = path.split("/");
  const isUnder = (pattern: string) => {
    const parts = pattern.split("/");
    return (
      parts.length === steps.length &&
      parts.every((part, index) => part === steps[index] || (part.startsWith("[") && steps[index] !== ""))
    );
  };
  return Object.keys(ROUTES).find(isUnder) ?? null;
}

/** Whether somebody may open a path, without its query. Plain files are open to all. */
export function mayOpen(role: Role, path: string): boolean {
  if (role === "owner" || isPlainFile(path)) return true;
  const route = routeOf(path);
  return route !== null && ROUTES[route].includes(role);
}

/** Whether somebody may call an action, named as in {@link ACTIONS}. */
export const mayCall = (role: Role, action: string): boolean =>
  role === "owner" || (Object.hasOwn(ACTIONS, action) && ACTIONS[action].includes(role));
