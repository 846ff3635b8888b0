import { z } from "zod";
import { today } from "../../clock";
import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { formIn, readEnquiry } from "../asked-enquiry";
import { answerLines } from "./answer-lines";
import { streamedLines } from "./streamed-lines";

const questionSchema = z.object({ form: z.unknown() });

/** What can be said of a question as it is being typed, as JSON lines; or all that stands in the way of it. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, questionSchema, "not an enquiry");
  if (refusal) return refusal;
  const read = readEnquiry(formIn(asked.form), loadFarm().farm);
  return streamedLines(read.ok ? answerLines(read.parsed, today()) : [{ problems: read.problems }].values());
}
