import { signOut } from "../sign-in/sign-out-action";

/** Whom this device is signed in as, at the foot of every page, and the way out. */
export const SignOut = ({ role }: { role: string }) => (
  <form className="theme" action={signOut}>
    <span className="note">Signed in as {role}</span>
    <button type="submit" className="quiet">
      Sign out
    </button>
  </form>
);
