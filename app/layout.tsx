import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import "./look/font-near.css";
import "./look/tokens.css";
import "./look/flower-colours.css";
import "./look/base.css";
import "./look/flower-marks.css";
import "./look/flowers.css";
import "./look/parts.css";
import "./look/marks.css";
import "./look/forms.css";
import "./look/tables.css";
import "./frame/frame.css";
import "./season/season.css";
import "./season/gaps.css";
import "./season/week.css";
import "./season/ribbon/ribbon.css";
import "./season/ribbon/ribbon-board.css";
import "./season/ribbon/ribbon-rows.css";
import "./season/bloom-rows.css";
import "./beds/beds.css";
import "./beds/bed-list.css";
import "./beds/bed-map.css";
import "./what-if/suppose/suppose.css";
import "./what-if/what-if.css";
import "./enquiry/enquiry.css";
import "./enquiry/enquiry-parts.css";
import "./keep-or-dig/board/bed-table.css";
import "./keep-or-dig/keep-or-dig.css";
import "./keep-or-dig/worksheet/worksheet.css";
import "./bookings/bookings.css";
import "./bookings/editor/matrix.css";
import "./beds/grid/grid.css";
import "./beds/buds/buds.css";
import "./bookings/booking-list.css";
import "./bookings/promises/promises.css";
import "./bookings/review/review.css";
import "./picking/picking.css";
import "./today/today.css";
import "./field/field.css";
import "./buying/buying.css";
import "./picking/pick-paper.css";
import "./picking/bucket-labels.css";
import "./farm/farm.css";
import "./farm/crops/crops.css";
import "./farm/figures/first-figures.css";
import "./farm/figures/figures.css";
import "./farm/copies/copies.css";
import "./farm/people/people.css";
import "./farm/cooler/cooler.css";
import "./look/print.css";
import type { FarmFileRefused } from "#db/file/farm-file-refused";
import { FieldBar } from "./field/field-bar.client";
import { EnquiryLink } from "./frame/enquiry-link.client";
import { FileRefused } from "./frame/file-refused";
import { LastChange } from "./frame/last-change";
import { Nav, ThumbBar } from "./frame/nav.client";
import { screensOf } from "./frame/screens";
import { SignOut } from "./frame/sign-out";
import { chosenTheme } from "./frame/theme";
import { ThemeSwitch } from "./frame/theme-switch";
import { Unreadable } from "./frame/unreadable";
import { farmProblems, farmRevision, fileRefused, isFarmHeld, loadFarm } from "./load";
import { display, text } from "./look/fonts";
import { Symbols } from "./look/symbols";
import { mayOpen } from "./people/allowed";
import type { Role } from "./people/roles";
import { openFarm, roleNow } from "./people/who";
import { OfRevision } from "./ui/farm-revision.client";

export const metadata: Metadata = {
  title: { default: "Stems & Saturdays", template: "%s · Stems & Saturdays" },
  description: "Event bookings matched with the weekly harvest of a farmer-florist's beds.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** Every page reads the farm as it stands: nothing is rendered ahead of time. */
export const dynamic = "force-dynamic";

export default async function Layout({ children }: { children: ReactNode }) {
  const refused = fileRefused();
  const theme = await chosenTheme();
  const role = roleNow();
  const screens = screensOf(role);
  const hasEnquiry = mayOpen(role, "/enquiry");
  return (
    <html
      lang="en"
      // 131 kB of fonts take a slow phone in the field longer than all else together.
      className={role === "helper" ? undefined : `${display.variable} ${text.variable}`}
      data-theme={theme === "system" ? undefined : theme}
    >
      <body>
        <Symbols />
        <a className="skip" href="#main">
          Skip to the page
        </a>
        <header className="mast">
          <a className="farm-name" href="/">
            <svg className="gl f-coral" width="30" height="30" aria-hidden="true">
              <use href="#r-focal" />
            </svg>
            <span>
              <b>
                {role === "stranger" || refused || farmProblems().length > 0
                  ? "Stems & Saturdays"
                  : loadFarm().farm.name}
              </b>
              <small>Stems &amp; Saturdays</small>
            </span>
          </a>
          {screens.length > 0 && <Nav screens={screens} />}
          {hasEnquiry && <EnquiryLink />}
        </header>
        <main id="main">{pageOf(role, refused, children)}</main>
        <footer className="foot">
          <p>
            A forecast is a forecast: walk the beds before you promise. Built-in figures carry their source, or the
            words <em>our reading</em>, <em>common practice</em> or <em>from memory</em>; your own numbers overrule
            them.
          </p>
          <ThemeSwitch />
          {openFarm() && role !== "stranger" && <SignOut role={role} />}
        </footer>
        {screens.length > 0 && <ThumbBar screens={screens} hasEnquiry={hasEnquiry} />}
      </body>
    </html>
  );
}

/** Strangers are shown nothing of the farm; what is wrong with its file, and the ways out, are the owner's. */
function pageOf(role: Role, refused: FarmFileRefused | null, children: ReactNode) {
  if (role === "stranger") return children;
  if (!refused) return <Readable>{children}</Readable>;
  return role === "owner" ? (
    <FileRefused refused={refused} />
  ) : (
    <p>The farm cannot be read just now: tell its owner.</p>
  );
}

/** The page itself, or the rows that keep the farm from being read. */
function Readable({ children }: { children: ReactNode }) {
  const problems = farmProblems();
  if (problems.length > 0) return <Unreadable problems={problems} />;
  return (
    <OfRevision revision={farmRevision()}>
      {isFarmHeld() && (
        <p className="notice" role="status">
          Another program holds the farm’s file just now. This is the farm as it was read last; nothing can be saved
          until that program lets go.
        </p>
      )}
      <FieldBar />
      <LastChange />
      {children}
    </OfRevision>
  );
}
