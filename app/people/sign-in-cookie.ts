import { cookies } from "next/headers";
import { SESSION_SECONDS } from "./people";
import { SESSION_COOKIE } from "./session-cookie";
import { openFarm } from "./who";

/** Keeps a token on the device that is being answered: no script and no other site can have it sent. */
export async function rememberSession(token: string): Promise<void> {
  const secure = openFarm()?.isEncrypted ?? false;
  const life = { httpOnly: true, sameSite: "strict", path: "/", maxAge: SESSION_SECONDS, secure } as const;
  (await cookies()).set(SESSION_COOKIE, token, life);
}

/** Forgets the token of this device. */
export async function forgetSession(): Promise<void> {
  (await cookies()).delete(SESSION_COOKIE);
}
