import type { z } from "zod";
import { isJson } from "./judge";

/** What a route was asked, or the answer that says why that is none of its questions. */
export type JsonAsked<T> =
  | { readonly asked: T; readonly refusal: null }
  | { readonly asked: null; readonly refusal: Response };

/**
 * Reads a question sent as JSON, and as nothing else: a page of another site can send text or a form unasked, but no JSON.
 *
 * @param otherwise  what the question is not, in words: "not a booking form"
 */
export async function jsonAsked<T>(request: Request, schema: z.ZodType<T>, otherwise: string): Promise<JsonAsked<T>> {
  const refused = (status: number, problem: string) => ({
    asked: null,
    refusal: Response.json({ problem }, { status }),
  });
  if (!isJson(request.headers.get("content-type") ?? "")) return refused(415, "send the question as application/json");
  const parsed = schema.safeParse(await request.json().catch(() => null));
  return parsed.success ? { asked: parsed.data, refusal: null } : refused(400, otherwise);
}
