import { z } from "zod";
import { type Parsed, problemsOf } from "#lib/domain/problem";
import type { SheetFile } from "#lib/sheets/read-farm-sheets";
import { unzipped } from "./upload";

const sendingSchema = z.object({
  step: z.enum(["check", "all", "clean"]),
  sending: z.coerce.number().int(),
  files: z.instanceof(Blob, { error: "choose at least one file" }),
});

export type Sending = {
  readonly step: "check" | "all" | "clean";
  readonly sending: number;
  readonly files: readonly SheetFile[];
};

/** What the form of files sent: one zip with the sheets in it, decoded. Letters that are no UTF-8 come out as U+FFFD, which the reader reports. */
export async function readSending(form: FormData): Promise<Parsed<Sending>> {
  const parsed = sendingSchema.safeParse(Object.fromEntries(form));
  if (!parsed.success) return { ok: false, problems: problemsOf(parsed.error) };
  const files = unzipped(new Uint8Array(await parsed.data.files.arrayBuffer()));
  if (!files)
    return { ok: false, problems: [{ place: "files", message: "the files did not arrive whole: send them again" }] };
  const decoder = new TextDecoder();
  return {
    ok: true,
    parsed: { ...parsed.data, files: files.map(({ name, bytes }) => ({ name, text: decoder.decode(bytes) })) },
  };
}
