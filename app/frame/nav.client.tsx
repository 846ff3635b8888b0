"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";

type Screen = { readonly href: string; readonly name: string; readonly also?: string };

const SCREENS: readonly Screen[] = [
  { href: "/", name: "Season", also: "/weeks" },
  { href: "/bookings", name: "Bookings" },
  { href: "/beds", name: "Beds" },
  { href: "/keep-or-dig", name: "Keep or dig" },
  { href: "/what-if", name: "What if" },
  { href: "/picking", name: "Picking" },
  { href: "/buying", name: "Buying" },
  { href: "/farm", name: "Farm" },
];

/** On a desk it stands apart from the cards, in the masthead. */
const ENQUIRY: Screen = { href: "/enquiry", name: "Enquiry" };

/** The screens that a thumb reaches beside the enquiry; the rest stand behind "All". */
const AT_THE_THUMB = ["/", "/bookings", "/picking"];

/** The screens as index cards, the one that is open marked. */
export function Nav() {
  return (
    <nav aria-label="Screens">
      <Screens screens={SCREENS} className="nav" />
    </nav>
  );
}

/** The bar of five on a phone: three screens, the enquiry, and all others. */
export function ThumbBar() {
  const path = usePathname();
  const near = [...SCREENS.filter(({ href }) => AT_THE_THUMB.includes(href)), ENQUIRY];
  const far = SCREENS.filter(({ href }) => !AT_THE_THUMB.includes(href));
  return (
    <nav className="thumb-bar" aria-label="Screens at the thumb">
      <ul>
        {near.map((screen) => (
          <ScreenLink key={screen.href} screen={screen} path={path} />
        ))}
        <li>
          <details key={path}>
            <summary>All</summary>
            <Screens screens={far} />
          </details>
        </li>
      </ul>
    </nav>
  );
}

function Screens({ screens, className }: { screens: readonly Screen[]; className?: string }) {
  const path = usePathname();
  return (
    <ul className={className}>
      {screens.map((screen) => (
        <ScreenLink key={screen.href} screen={screen} path={path} />
      ))}
    </ul>
  );
}

function ScreenLink({ screen: { href, name, also }, path }: { screen: Screen; path: string }) {
  const isOpen = href === "/" ? path === "/" : path.startsWith(href);
  const isHere = isOpen || (also !== undefined && path.startsWith(also));
  return (
    <li>
      <Link href={href} prefetch={false} aria-current={isHere ? "page" : undefined}>
        {name}
      </Link>
    </li>
  );
}
