import type { z } from "zod";
import { type JsonAsked, jsonAsked } from "./door/json-asked";
import { whyUnread } from "./download";

/** A question of the farm, sent as JSON. Where the farm cannot be read, the refusal says why in words, with the status of a service that is out. */
export async function farmAsked<T>(request: Request, schema: z.ZodType<T>, otherwise: string): Promise<JsonAsked<T>> {
  const question = await jsonAsked(request, schema, otherwise);
  const problem = question.refusal ? null : whyUnread();
  if (problem === null) return question;
  return { asked: null, refusal: Response.json({ problem }, { status: 503 }) };
}
