import { oneOf, type RandomSource } from "#lib/maths/random";
import { ACTIONS, ROUTES } from "../../../app/people/allowed";
import { THEIRS } from "../../app/people/theirs";
import type { Crew } from "./crew";

type Trespasser = { readonly role: keyof typeof THEIRS; readonly token: string | null };

/** Somebody opens a page, calls an action or sends a count that is not theirs: it is refused, and nothing comes of it. */
export async function trespass(crew: Crew, random: RandomSource): Promise<void> {
  const { role, token } = trespasser(crew, random);
  const { routes, actions, home } = THEIRS[role];
  const refuses = (what: string, status: number, expected: readonly number[]) => {
    if (!expected.includes(status)) crew.faults.push(`a ${role} was answered ${status}: ${what}`);
  };
  const route = oneOf(
    random,
    Object.keys(ROUTES).filter((one) => !routes.includes(one)),
  );
  const page = await crew.line.ask({ path: route.replaceAll(/\[\w+\]/g, "1"), token });
  refuses(`opening ${route}`, page.status, [303]);
  const action = oneOf(
    random,
    Object.keys(ACTIONS)
      .map((name) => name.split("#")[1])
      .filter((name) => !actions.includes(name)),
  );
  const id = crew.line.idOf(action);
  const fields = [[`$ACTION_ID_${id}`, ""], ...["id", "bedId", "bookingId", "personId"].map((name) => [name, "1"])];
  const call = await crew.line.ask({ path: home, token, form: fields as [string, string][] });
  refuses(`calling ${action} by a form`, call.status, [403]);
  const script = await crew.line.ask({ path: home, token, json: [], headers: { "next-action": id } });
  refuses(`calling ${action} by a script`, script.status, [403]);
  if (role === "helper") return;
  const sent = await crew.line.ask({ path: "/today/tallies", token, json: { tallies: [A_COUNT] } });
  refuses("sending a count", sent.status, [401, 403]);
}

/** A count that anybody's list could have: it must never be found in the farm. */
export const A_COUNT = {
  ...{ key: "nobody-may-send-this", cutOn: "2027-06-10", bedId: 1, varietyId: 1, asked: [], stemsCut: 999 },
  ...{ seenStems: 0, seenRevision: 1, countedAt: "2027-06-10T05:00:00Z" },
};

function trespasser(crew: Crew, random: RandomSource): Trespasser {
  const gone = [...crew.endedTokens];
  const strangers: Trespasser[] = [null, "", "0", "a".repeat(43), ...gone.slice(-3)].map((token) => ({
    role: "stranger",
    token,
  }));
  const inside = crew.members.filter(crew.isIn).map(({ role, phone: { token } }) => ({ role, token }));
  return oneOf(random, random() < 0.4 || inside.length === 0 ? strangers : inside);
}
