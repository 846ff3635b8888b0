"use server";

import { refresh } from "next/cache";
import { cookies } from "next/headers";
import { z } from "zod";
import { sentForm } from "../door/sent-form";
import { THEME_COOKIE, THEMES } from "./theme";

const YEAR_SECONDS = 365 * 24 * 60 * 60;

/** Keeps light, dark, or what the system says, on this device. */
export async function chooseTheme(sent: FormData): Promise<void> {
  const theme = z.enum(THEMES).catch("system").parse(sentForm(sent).get("theme"));
  (await cookies()).set(THEME_COOKIE, theme, { sameSite: "strict", httpOnly: true, path: "/", maxAge: YEAR_SECONDS });
  refresh();
}
