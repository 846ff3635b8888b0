import localFont from "next/font/local";

/**
 * Fetched where a page is set in them, and not ahead of it: a helper's pages are set in the fonts of the phone. Until they are there a page is set in fonts
 * of the system that are made to take the same room (font-near.css).
 */

/** Headings and great numbers: Besley, a Clarendon (SIL OFL 1.1). */
export const display = localFont({
  variable: "--font-display",
  display: "swap",
  preload: false,
  src: [
    { path: "../../node_modules/@fontsource/besley/files/besley-latin-600-normal.woff2", weight: "600" },
    { path: "../../node_modules/@fontsource/besley/files/besley-latin-800-normal.woff2", weight: "800" },
  ],
  fallback: ["display-near"],
  adjustFontFallback: false,
});

/** Everything else: Asap, with tabular figures and a width axis (SIL OFL 1.1). */
export const text = localFont({
  variable: "--font-text",
  display: "swap",
  preload: false,
  src: "../../node_modules/@fontsource-variable/asap/files/asap-latin-wdth-normal.woff2",
  weight: "100 900",
  declarations: [{ prop: "font-stretch", value: "75% 125%" }],
  fallback: ["text-near"],
  adjustFontFallback: false,
});
