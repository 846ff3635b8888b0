"use client";

import { startTransition } from "react";
import { counted, type SentTally } from "#lib/domain/unsent";
import { newKey } from "../ui/sending";
import { momentNow } from "./phone-clock.client";
import { sendUnsent } from "./send-unsent.client";
import { keepUnsent } from "./unsent-store.client";

/** Keeps on this phone what somebody says of a row of a list, and sends it when there is a line. `name`: what the row is called. */
export function say(said: Omit<SentTally, "key" | "countedAt">, name: string): void {
  keepUnsent(counted({ ...said, key: newKey(), countedAt: momentNow() }, name));
  startTransition(() => void sendUnsent());
}
