"use client";

import { useActionState } from "react";
import { type SignInState, signIn } from "./sign-in-action";

/** Apart from the kit of forms, which keeps in the browser what was typed: a password is kept nowhere. */
export function SignInForm() {
  const [problem, send, isPending] = useActionState<SignInState, FormData>(signIn, null);
  return (
    <form action={send} className="kit">
      <div className="fields">
        <div className="field">
          <label htmlFor="password">The owner’s password</label>
          <input
            type="password"
            id="password"
            name="password"
            autoComplete="current-password"
            required
            aria-invalid={problem !== null}
            aria-describedby={problem === null ? undefined : "sign-in-problem"}
          />
        </div>
      </div>
      {problem !== null && (
        <p id="sign-in-problem" role="alert" className="notice bad">
          Not signed in: {problem}.
        </p>
      )}
      <div className="actions">
        <button type="submit" className="main" disabled={isPending}>
          {isPending ? "Looking…" : "Sign in"}
        </button>
      </div>
    </form>
  );
}
