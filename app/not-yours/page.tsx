import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { HOMES } from "../people/homes";
import { roleNow } from "../people/who";

export const metadata: Metadata = { title: "For the owner" };

/** Where somebody ends who follows a link to what is not theirs. */
export default function NotYoursPage() {
  const role = roleNow();
  if (role === "owner") redirect("/");
  return (
    <>
      <h1>This page is for the owner</h1>
      <p>Ask the owner of the farm for what you need from it.</p>
      <p className="actions">
        <a className="button main" href={HOMES[role]}>
          Back to work
        </a>
      </p>
    </>
  );
}
