import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { openFarm, roleNow } from "../people/who";
import { ForgetPages } from "./forget-pages.client";
import { SignInForm } from "./sign-in-form.client";

export const metadata: Metadata = { title: "Sign in" };

/** The way in for the owner, and where helpers and designers learn theirs. */
export default function SignInPage() {
  const open = openFarm();
  if (!open || roleNow() !== "stranger") redirect("/");
  return (
    <>
      <ForgetPages />
      <h1>Sign in</h1>
      <SignInForm />
      <p className="note">
        Helpers and designers need no password: scan the code on the owner’s screen, under Farm, People. A forgotten
        password is set anew at the farm’s computer: <code>npm run password</code>.
      </p>
      {!open.isEncrypted && (
        <p className="note">
          Nothing is encrypted on the way. Sign in on the farm’s own network only, never on a guests’ or a market’s.
        </p>
      )}
    </>
  );
}
