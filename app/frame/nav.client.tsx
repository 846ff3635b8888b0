"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import type { Screen } from "./screens";

/** On a desk it stands apart from the cards, in the masthead. */
const ENQUIRY: Screen = { href: "/enquiry", name: "Enquiry" };

/** The screens that a thumb reaches beside the enquiry; the rest stand behind "All". */
const AT_THE_THUMB = ["/today", "/", "/bookings"];

/** More are too many for a thumb. */
const MOST_AT_THE_THUMB = 5;

type Theirs = { readonly screens: readonly Screen[] };

/** The reader's screens as index cards, the one that is open marked. */
export function Nav({ screens }: Theirs) {
  return (
    <nav aria-label="Screens">
      <Screens screens={screens} className="nav" />
    </nav>
  );
}

/** The bar of five on a phone: three screens, the enquiry, and all others; or all of them, where they are few. */
export function ThumbBar({ screens, hasEnquiry }: Theirs & { readonly hasEnquiry: boolean }) {
  const path = usePathname();
  const all = hasEnquiry ? [...screens, ENQUIRY] : screens;
  const isNear = ({ href }: Screen) =>
    all.length <= MOST_AT_THE_THUMB || AT_THE_THUMB.includes(href) || href === ENQUIRY.href;
  const far = all.filter((screen) => !isNear(screen));
  return (
    <nav className="thumb-bar" aria-label="Screens at the thumb">
      <ul>
        {all.filter(isNear).map((screen) => (
          <ScreenLink key={screen.href} screen={screen} path={path} />
        ))}
        {far.length > 0 && (
          <li>
            <details key={path}>
              <summary>All</summary>
              <Screens screens={far} />
            </details>
          </li>
        )}
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
