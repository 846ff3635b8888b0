import type { Metadata } from "next";
import { openFarm } from "../../people/who";
import { join } from "./join-action";

export const metadata: Metadata = { title: "Join" };

const MAY = {
  owner: "",
  helper:
    "You will see what is to be cut, what stands in the cooler and which buds to look at, and note what you find.",
  designer: "You will see the bookings, what they have and lack, and the beds.",
};

/** Where the code on the owner's screen leads. It is used up by the button, not by looking: programs look at links too. */
export default async function JoinPage({ params }: { params: Promise<{ code: string }> }) {
  const { code } = await params;
  const person = openFarm()?.people.invited(code) ?? null;
  if (!person)
    return (
      <>
        <h1>This code is used or over</h1>
        <p>A code is good for one phone and a quarter of an hour. Ask for a new one on the owner’s screen.</p>
      </>
    );
  return (
    <>
      <h1>
        Join as {person.name}, {person.role}
      </h1>
      <p>{MAY[person.role]} This phone stays signed in for thirty days, or until the owner ends it.</p>
      <form action={join} className="kit">
        <input type="hidden" name="code" value={code} />
        <button type="submit" className="main">
          Join on this phone
        </button>
      </form>
    </>
  );
}
