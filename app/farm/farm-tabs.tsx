import { mayOpen } from "../people/allowed";
import { roleNow } from "../people/who";

const TABS = [
  { href: "/farm", name: "Figures" },
  { href: "/farm/weather", name: "Weather" },
  { href: "/farm/crops", name: "Crops" },
  { href: "/farm/what-changed", name: "What changed" },
  { href: "/farm/year-end", name: "Year’s end" },
  { href: "/farm/recipes", name: "Recipes" },
  { href: "/farm/cooler", name: "Cooler" },
  { href: "/farm/files", name: "Files" },
  { href: "/farm/copies", name: "Copies" },
  { href: "/farm/history", name: "History" },
  { href: "/farm/people", name: "People" },
] as const;

/** The pages of the farm that are the reader's, the one that is open marked. */
export const FarmTabs = ({ open }: { open: (typeof TABS)[number]["href"] }) => (
  <nav aria-label="Farm">
    <ul className="tabs">
      {TABS.filter(({ href }) => mayOpen(roleNow(), href)).map(({ href, name }) => (
        <li key={href}>
          <a href={href} aria-current={href === open ? "page" : undefined}>
            {name}
          </a>
        </li>
      ))}
    </ul>
  </nav>
);
