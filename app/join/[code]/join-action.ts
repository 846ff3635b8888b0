"use server";

import { redirect } from "next/navigation";
import { sentForm } from "../../door/sent-form";
import { HOMES } from "../../people/homes";
import { rememberSession } from "../../people/sign-in-cookie";
import { openFarm } from "../../people/who";

/** Signs this phone in as the person that the code is for; a code that is used or over leads back to its page, which says so. */
export async function join(sent: FormData): Promise<void> {
  const code = sentForm(sent).get("code");
  const open = openFarm();
  if (!open || typeof code !== "string") redirect("/");
  const person = open.people.invited(code);
  const token = open.people.join(code);
  if (!person || token === null) redirect(`/join/${encodeURIComponent(code.slice(0, 100)) || "none"}`);
  await rememberSession(token);
  redirect(HOMES[person.role]);
}
