import { cookies } from "next/headers";

export const THEMES = ["system", "light", "dark"] as const;
export type Theme = (typeof THEMES)[number];

export const THEME_COOKIE = "theme";

/** Light or dark as the reader chose it; "system" until then. */
export async function chosenTheme(): Promise<Theme> {
  const kept = (await cookies()).get(THEME_COOKIE)?.value;
  return THEMES.find((theme) => theme === kept) ?? "system";
}
