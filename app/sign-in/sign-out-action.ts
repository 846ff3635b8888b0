"use server";

import { redirect } from "next/navigation";
import { forgetSession } from "../people/sign-in-cookie";
import { asking, openFarm } from "../people/who";

/** Signs this device out. */
export async function signOut(): Promise<void> {
  const token = asking()?.token;
  if (token) openFarm()?.people.signOut(token);
  await forgetSession();
  redirect("/sign-in");
}
