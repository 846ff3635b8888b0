type Way = { readonly name: string; readonly words: string; readonly href: string; readonly button: string };

const WAYS: readonly Way[] = [
  { name: "Copies", words: "one a day by itself; one now, one back", href: "/farm/copies", button: "Open" },
  {
    name: "The whole farm, as files",
    words: "beds, plantings, bookings, crops: one sheet each",
    href: "/farm/files#out",
    button: "Take out",
  },
  {
    name: "From a spreadsheet",
    words: "every problem is listed before anything is written",
    href: "/farm/files#import",
    button: "Bring in",
  },
  { name: "Pick days, as a calendar", words: "for any calendar", href: "/picking/calendar", button: "Take out" },
];

/** Copies of the farm, and the ways in and out of it. */
export const WaysOut = () => (
  <section className="figure-block" aria-labelledby="ways">
    <h2 id="ways">Copies</h2>
    <ul className="ways-out">
      {WAYS.map(({ name, words, href, button }) => (
        <li key={name}>
          <span>
            <b>{name}</b>
            <small>{words}</small>
          </span>
          <a className="button" href={href}>
            {button}
            <span className="visually-hidden">: {name}</span>
          </a>
        </li>
      ))}
    </ul>
  </section>
);
