import type { ReactNode } from "react";
import { type ACTIONS, mayCall } from "./allowed";
import { roleNow } from "./who";

/** A part of a page that is sent only to those who may call an action, named as in {@link ACTIONS}. */
export const IfMay = ({ call, children }: { call: keyof typeof ACTIONS; children: ReactNode }) =>
  mayCall(roleNow(), call) ? children : null;
