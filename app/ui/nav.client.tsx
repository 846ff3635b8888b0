"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";

const SCREENS = [
  { href: "/", name: "Season", also: "/weeks" },
  { href: "/bookings", name: "Bookings" },
  { href: "/beds", name: "Beds" },
  { href: "/keep-or-dig", name: "Keep or dig" },
  { href: "/what-if", name: "What if" },
  { href: "/picking", name: "Picking" },
  { href: "/buying", name: "Buying" },
  { href: "/farm", name: "Farm" },
];

/** The screens, the one that is open marked. */
export function Nav() {
  const path = usePathname();
  const isOpen = (href: string) => (href === "/" ? path === "/" : path.startsWith(href));
  return (
    <nav aria-label="Screens">
      <ul className="nav">
        {SCREENS.map(({ href, name, also }) => (
          <li key={href}>
            <Link
              href={href}
              prefetch={false}
              aria-current={isOpen(href) || (also && path.startsWith(also)) ? "page" : undefined}
            >
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
