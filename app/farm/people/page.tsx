import type { Metadata } from "next";
import { HIRED_ROLES } from "#lib/domain/people";
import type { Hired } from "../../people/people";
import { openFarm } from "../../people/who";
import { Form } from "../../ui/form.client";
import { SelectField, TextField } from "../../ui/form-fields.client";
import { Table } from "../../ui/table";
import { FarmTabs } from "../farm-tabs";
import { CalendarForm } from "./calendar-form.client";
import { CodeForm } from "./code-form.client";
import { end, endCalendar, hire, signOutEverywhere } from "./people-actions";

export const metadata: Metadata = { title: "People" };

const DOES = { helper: "helper: cuts and counts", designer: "designer: sees to bookings" } as const;

/** Who works with the farm beside the owner: each with the code for a phone, and ended with a tap. */
export default function PeoplePage() {
  const open = openFarm();
  return (
    <>
      <h1>Farm: people</h1>
      <FarmTabs open="/farm/people" />
      {open ? <People {...open} hired={open.people.hired()} isShared={open.people.hasCalendar} /> : <Closed />}
    </>
  );
}

const Closed = () => (
  <>
    <p>The farm is served to this machine alone, and whoever sits at it is the owner. No phone can reach it.</p>
    <p>To open it to the farm’s own network, stop it in its window with Ctrl+C, and then:</p>
    <ol>
      <li>
        once, set the owner’s password: <code>npm run password</code>
      </li>
      <li>
        start it for people: <code>npm start -- --people</code>
      </li>
    </ol>
  </>
);

type Props = { hired: readonly Hired[]; address: string; isEncrypted: boolean; isShared: boolean };

const People = ({ hired, address, isEncrypted, isShared }: Props) => (
  <>
    <p>
      The farm is open at <code>{address}</code>.{" "}
      {isEncrypted
        ? "What is sent is encrypted."
        : "What is sent is not encrypted: whoever is on the same network with the right tools can read it and act in your name. Keep it to a network of your own."}
    </p>
    {hired.length === 0 ? (
      <p>Nobody but you yet.</p>
    ) : (
      <Table
        caption="People"
        isCaptionHidden
        columns={[
          { head: "Name", kind: "name", cell: ({ name }) => name },
          { head: "Does", cell: ({ role }) => (role === "owner" ? "" : DOES[role]) },
          { head: "Phone", cell: (person) => phoneWords(person) },
          { head: "Use", kind: "tool", cell: (person) => <PersonTools person={person} /> },
        ]}
        rows={hired}
        keyOf={({ id }) => id}
      />
    )}
    <section aria-labelledby="one-more">
      <h2 id="one-more">One more</h2>
      <p>
        A helper sees what is to be cut and what stands in the cooler, with clients by a short name and no prices. A
        designer sees the bookings, answers enquiries, and may look at the beds.
      </p>
      <Form key={hired.length} action={hire} submit="Take on" label="Take somebody on">
        <div className="fields">
          <TextField name="name" label="Name" value="" />
          <SelectField
            name="role"
            label="Does what"
            value="helper"
            options={HIRED_ROLES.map((role) => ({ value: role, label: DOES[role] }))}
          />
        </div>
      </Form>
    </section>
    <section aria-labelledby="the-calendar">
      <h2 id="the-calendar">The calendar by subscription</h2>
      <p>
        Picking days and events in a calendar program that reads them again by itself, with clients by a short name.
        Whoever has the address has the calendar. {isShared && "There is an address now."}
      </p>
      <div className="signed-in">
        <CalendarForm isShared={isShared} />
        {isShared && (
          <form action={endCalendar}>
            <button type="submit" className="quiet">
              End the address
            </button>
          </form>
        )}
      </div>
    </section>
    <section aria-labelledby="a-phone-lost">
      <h2 id="a-phone-lost">A phone lost</h2>
      <p>Signs everybody out on every device, you too, and ends every code and the calendar’s address.</p>
      <form action={signOutEverywhere}>
        <button type="submit">Sign out everywhere</button>
      </form>
    </section>
  </>
);

function phoneWords({ isIn, isAwaited }: Hired): string {
  if (isIn) return isAwaited ? "signed in, a new code waits" : "signed in";
  return isAwaited ? "a code waits" : "none yet";
}

const PersonTools = ({ person: { id, name, isIn } }: { person: Hired }) => (
  <div className="signed-in">
    <CodeForm personId={id} name={name} words={isIn ? "Another phone" : "Code for a phone"} />
    <form action={end}>
      <input type="hidden" name="personId" value={id} />
      <button type="submit" className="quiet" aria-label={`End: ${name}`}>
        End
      </button>
    </form>
  </div>
);
