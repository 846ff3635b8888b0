"use server";

import { redirect } from "next/navigation";
import { PASSWORD_LETTERS } from "#db/people/password";
import { sentForm } from "../door/sent-form";
import { rememberSession } from "../people/sign-in-cookie";
import { asking, openFarm } from "../people/who";

/** What is wrong with a sign-in, in words; null before one was tried. */
export type SignInState = string | null;

/** Signs the owner in on this device. What was typed goes nowhere but into the comparison. */
export async function signIn(_: SignInState, sent: FormData): Promise<SignInState> {
  const password = sentForm(sent).get("password");
  const open = openFarm();
  if (!open) redirect("/");
  if (typeof password !== "string" || password === "") return "write the owner’s password";
  if (password.length > 2 * PASSWORD_LETTERS.most) return "no password is as long as this";
  const signed = await open.people.signIn(password, asking()?.sender ?? "");
  if (!signed.ok) return signed.problem;
  await rememberSession(signed.token);
  redirect("/");
}
