/** What is said of a page that could not be made. Showing a page writes nothing; whether a save just before it landed is not known there. */
export const FAILED = {
  title: "This page could not be made",
  what: "Something went wrong while the page was made, which changes none of your records. If you had just saved something, look into the history whether it is there before you save it again. If it stays like this, the window in which the tool was started says more.",
  ways: [
    { href: "/farm/history", name: "History of changes" },
    { href: "/farm/copies", name: "Copies of the farm" },
  ],
} as const;
