"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { HIRED_ROLES, seenName } from "#lib/domain/people";
import { sentForm } from "../../door/sent-form";
import { qrDrawing } from "../../people/qr-squares";
import { openFarm } from "../../people/who";
import type { FormState } from "../../ui/form-state";
import { FormValues } from "../../ui/form-values";
import type { CodeState } from "./code-state";

/** These stand outside `action`: people are no records of the farm, and what was ended is not to be brought back by an undo. */

const hiredSchema = z.object({
  name: z
    .string()
    .trim()
    .max(40, "write 40 letters at the most")
    .refine((name) => seenName(name) !== "", "write what this person is called"),
  role: z.enum(HIRED_ROLES, "choose what this person does"),
});

/** Takes somebody on. */
export async function hire(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const read = values.parse(hiredSchema, { name: values.text("name"), role: values.text("role") });
  if (!read.ok) return values.refused(read.problems);
  const hired = openFarm()?.people.hire(read.parsed.name, read.parsed.role) ?? { problem: NOT_OPEN };
  if ("problem" in hired) return values.refused([{ place: "name", message: hired.problem }]);
  redirect("/farm/people");
}

/** Makes a new code for the phone of one person, and shows it to who asked: it is kept nowhere. */
export async function invite(_: CodeState, sent: FormData): Promise<CodeState> {
  const open = openFarm();
  const code = open?.people.invite(personIn(sent)) ?? null;
  return open && code ? shown(`${open.address}/join/${code}`) : null;
}

/** Makes a new address of the season's calendar, and ends the one before. */
export async function newCalendar(): Promise<CodeState> {
  const open = openFarm();
  return open ? shown(`${open.address}/calendar/${open.people.newCalendar()}`) : null;
}

/** Ends the address of the calendar. */
export async function endCalendar(): Promise<void> {
  openFarm()?.people.endCalendar();
  redirect("/farm/people");
}

/** Ends what one person may do, at once. */
export async function end(sent: FormData): Promise<void> {
  openFarm()?.people.end(personIn(sent));
  redirect("/farm/people");
}

/** Signs everybody out everywhere, this device too. */
export async function signOutEverywhere(): Promise<void> {
  openFarm()?.people.signOutEverywhere();
  redirect("/sign-in");
}

const shown = (link: string): CodeState => ({ link, drawing: qrDrawing(link) });

const NOT_OPEN = "the farm is not open to people now";

const personIn = (sent: FormData): number => {
  const id = z.coerce.number().int().positive().safeParse(sentForm(sent).get("personId"));
  return id.success ? id.data : Number.NaN;
};
