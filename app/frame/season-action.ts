"use server";

import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import { isSeasonYear } from "#lib/domain/season-years";
import { sentForm } from "../door/sent-form";
import { SEASON_COOKIE } from "./season-year";

const choice = z.object({
  season: z.coerce.number().refine(isSeasonYear),
  // Neither "//name/" nor "/\\name/": browsers take both for the address of another site.
  back: z.string().regex(/^\/(?![/\\])[^\s\\]*$/),
});

/** Shows another season on every screen. A year that is none changes nothing. */
export async function chooseSeason(form: FormData): Promise<void> {
  const parsed = choice.safeParse(Object.fromEntries(sentForm(form)));
  if (!parsed.success) redirect("/");
  (await cookies()).set(SEASON_COOKIE, String(parsed.data.season), { sameSite: "strict", httpOnly: true, path: "/" });
  redirect(parsed.data.back);
}
