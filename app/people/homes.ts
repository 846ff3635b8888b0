import type { Role } from "./roles";

/** Where each role begins. */
export const HOMES: Readonly<Record<Role, string>> = {
  owner: "/",
  helper: "/today",
  designer: "/bookings",
  stranger: "/sign-in",
};
