import { mayOpen } from "../people/allowed";
import type { Role } from "../people/roles";

/** A screen as a card leads to it; `also` is where else one is then still on it. */
export type Screen = { readonly href: string; readonly name: string; readonly also?: string };

const SCREENS: readonly Screen[] = [
  { href: "/today", name: "Today" },
  { href: "/", name: "Season", also: "/weeks" },
  { href: "/bookings", name: "Bookings" },
  { href: "/beds", name: "Beds" },
  { href: "/keep-or-dig", name: "Keep or dig" },
  { href: "/what-if", name: "What if" },
  { href: "/picking", name: "Picking" },
  { href: "/buying", name: "Buying" },
  { href: "/farm", name: "Farm" },
];

/** Pages below a screen, and screens of their own to whoever may not open that one. */
const BELOW: readonly (Screen & { readonly under: string })[] = [
  { href: "/beds/buds", name: "Buds", under: "/beds" },
  { href: "/farm/cooler", name: "Cooler", under: "/farm" },
  { href: "/bench", name: "Bench", under: "/today" },
];

/** The screens that a role has cards for. */
export const screensOf = (role: Role): Screen[] =>
  [...SCREENS, ...BELOW.filter(({ under }) => !mayOpen(role, under))].filter(({ href }) => mayOpen(role, href));
