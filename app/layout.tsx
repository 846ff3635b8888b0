import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import "./look/hues.css";
import "./look/forms.css";
import "./look/tables.css";
import "./look/charts.css";
import "./frame/frame.css";
import "./season/season.css";
import "./season/bloom-rows.css";
import "./beds/beds.css";
import "./what-if/what-if.css";
import "./dates/dates.css";
import "./keep-or-dig/keep-or-dig.css";
import "./keep-or-dig/worksheet/worksheet.css";
import "./bookings/bookings.css";
import "./picking/picking.css";
import "./farm/farm.css";
import "./look/print.css";
import { FileRefused } from "./frame/file-refused";
import { LastChange } from "./frame/last-change";
import { Unreadable } from "./frame/unreadable";
import { farmProblems, farmRevision, fileRefused, isFarmHeld } from "./load";
import { OfRevision } from "./ui/farm-revision.client";
import { Nav } from "./ui/nav.client";

export const metadata: Metadata = {
  title: { default: "Stems & Saturdays", template: "%s · Stems & Saturdays" },
  description: "Event bookings matched with the weekly harvest of a farmer-florist's beds.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** Every page reads the farm as it stands: nothing is rendered ahead of time. */
export const dynamic = "force-dynamic";

export default function Layout({ children }: { children: ReactNode }) {
  const refused = fileRefused();
  return (
    <html lang="en">
      <body>
        <a className="skip" href="#main">
          Skip to the page
        </a>
        <header className="masthead">
          <div className="masthead-inner">
            <a className="brand" href="/">
              Stems &amp; Saturdays
            </a>
            <Nav />
          </div>
        </header>
        <main id="main">{refused ? <FileRefused refused={refused} /> : <Readable>{children}</Readable>}</main>
        <footer className="foot">
          <p>
            A forecast is a forecast: walk the beds before you promise. Built-in figures carry their source or the words{" "}
            <em>common practice</em> or <em>from memory</em>; your own numbers overrule them.
          </p>
        </footer>
      </body>
    </html>
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
      <LastChange />
      {children}
    </OfRevision>
  );
}
