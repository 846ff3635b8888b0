import { toDayNumber } from "#lib/domain/day";
import { pool } from "../../threads/pool";
import { answerOnBeds } from "../answer-on-beds";

/** What standing orders get with these beds kept. Null where there are none. */
export const POST = (request: Request): Promise<Response> =>
  answerOnBeds(request, "orders", (farm, asked, day, asker) =>
    pool().start(farm, "orders", { ...asked, todayNumber: toDayNumber(day) }, asker),
  );
