import { redirect } from "next/navigation";
import { z } from "zod";

const query = z.object({ on: z.string().max(40).catch("") });

/** The old address of the question leads to the new one, its day along. */
export default async function DatesPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, unknown>>;
}): Promise<never> {
  const { on } = query.parse(await searchParams);
  redirect(on === "" ? "/enquiry" : `/enquiry?${new URLSearchParams({ eventOn: on })}`);
}
