import { pool } from "../../threads/pool";
import { answerOnBeds } from "../answer-on-beds";

/** What each candidate bed is worth while these are kept. */
export const POST = (request: Request): Promise<Response> =>
  answerOnBeds(request, "worths", (farm, asked, _, asker) => pool().start(farm, "verdicts", asked, asker));
