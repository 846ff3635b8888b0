import { COMMON_PRACTICE, FROM_MEMORY, type Mark, type Origin } from "#lib/domain/sourced";

/** A thing to know before digging or keeping: in our words, with how sure we are. Not medical or legal advice. */
export type WinterCaution = {
  readonly topic:
    | "first winter"
    | "hardiness"
    | "wet ground"
    | "lifting"
    | "stakes"
    | "tarps"
    | "voles"
    | "knives"
    | "store";
  readonly words: string;
  readonly origin: Origin;
};

const from = (mark: Mark, source: string): Origin => ({ mark, source });

/** What the published sources say of hardiness in the ground. They do not agree, and none gives a survival to reckon with. */
export const HARDINESS: readonly WinterCaution[] = [
  { topic: "hardiness", words: "Rated hardy in zones 7 to 10.", origin: from("trade", "GT-LOPEZ25") },
  {
    topic: "hardiness",
    words: "Northwest Arkansas: no digging under a heavy mulch of straw or leaves.",
    origin: from("published", "ATTRA-DAHLIA"),
  },
  {
    topic: "hardiness",
    words:
      "Forsyth County, North Carolina: straw about 8 inches thick does in most winters, yet most people dig to be safe, and varieties differ.",
    origin: from("published", "ASKEXT-NC"),
  },
  {
    topic: "hardiness",
    words: "Against it, Virginia: tubers in the soil die once nights fall to 15 F (-9.4 C). Mulch is not mentioned.",
    origin: from("published", "HANKINS"),
  },
  {
    topic: "hardiness",
    words:
      "A trial of methods in zone 6 has been funded; we have not seen its results, and no published survival was found.",
    origin: from("published", "SARE-FNC24"),
  },
];

/** Everything the worksheet warns of: wet ground first. */
export const WINTER_CAUTIONS: readonly WinterCaution[] = [
  {
    topic: "wet ground",
    words: "Kept clumps need ground that drains: lift them where water stands.",
    origin: from("published", "DSG"),
  },
  {
    topic: "first winter",
    words:
      "First winter of keeping? Try a few beds first, of varieties that are easy to replace, and count what comes up.",
    origin: COMMON_PRACTICE,
  },
  ...HARDINESS,
  {
    topic: "lifting",
    words:
      "51 lb (23 kg) is the most for an easy lift, close and at waist height; low lifts with a twist, as with clumps and wet soil, come down to 8 to 12 lb. Carry fewer at a time.",
    origin: from("published", "OSHA-LIFT"),
  },
  {
    topic: "lifting",
    words: "A cubic yard of leaves weighs 250 to 500 lb (148 to 297 kg a cubic metre): fork, do not lift, a full tarp.",
    origin: from("published", "ORDEQ"),
  },
  { topic: "stakes", words: "Pull or cap every stake before you bend over the bed: eyes.", origin: COMMON_PRACTICE },
  {
    topic: "tarps",
    words:
      "On a sunny day it is hot under a tarp, in February too: shoots wake and rot. Lift the ends, and have it off by late March in zone 7.",
    origin: COMMON_PRACTICE,
  },
  {
    topic: "voles",
    words: "Voles winter under a cover and eat tubers: look for runs and trap before the leaves go on.",
    origin: COMMON_PRACTICE,
  },
  {
    topic: "tarps",
    words: "A wet tarp is heavy and slides: drain it, fold it with two, and keep off it in ice and wind.",
    origin: COMMON_PRACTICE,
  },
  {
    topic: "knives",
    words: "Cut away from the hand, with a glove on it. Clean the blade between clumps: virus and gall travel on it.",
    origin: COMMON_PRACTICE,
  },
  {
    topic: "store",
    words: "Expect to lose 5 to 10 % of good tubers in store; some varieties keep badly.",
    origin: from("published", "ADS-STORE"),
  },
  { topic: "store", words: "Stored tubers shrivel near a furnace and rot in a closed bag.", origin: FROM_MEMORY },
];
