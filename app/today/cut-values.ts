import { z } from "zod";
import { daySchema } from "#lib/domain/day";
import type { Parsed } from "#lib/domain/problem";
import { CUT, type CutDraft } from "#lib/domain/records/cut";
import { isDelivery } from "#lib/plan/road/orders";
import { splitCut } from "#lib/plan/road/split-cut";
import type { FormValues } from "../ui/form-values";

/** More bookings than share a row, or rows than a day has. */
const MOST = 1000;

/** The fields of a row's form: what the list asked, written by the page, and how many stems were cut. */
const row = z.object({
  cutOn: daySchema,
  bedId: CUT.bedId.schema,
  varietyId: CUT.varietyId.schema,
  asked: z.array(z.tuple([z.int(), z.int().min(0).max(1_000_000)])).max(MOST),
  stemsCut: CUT.stemsCut.schema,
});

/** Reads what was cut of a row, shared among its bookings. "None left" is 0, whatever number stands there. */
export function cutsOfRow(values: FormValues): Parsed<CutDraft[]> {
  const read = values.parse(row, {
    cutOn: values.text("cutOn"),
    bedId: values.hiddenNumber("bedId"),
    varietyId: values.hiddenNumber("varietyId"),
    asked: values.json("asked"),
    stemsCut: values.text("none") === "yes" ? 0 : values.number("stemsCut"),
  });
  if (!read.ok) return read;
  const { cutOn, bedId, varietyId, asked, stemsCut } = read.parsed;
  const parts = splitCut(
    asked.map(([id, stemsToCut]) => ({ bookingId: isDelivery({ id }) ? null : id, stemsToCut })),
    stemsCut,
  );
  return { ok: true, parsed: parts.map((part) => ({ cutOn, bedId, varietyId, ...part, goodStems: null })) };
}

export const cutIds = (values: FormValues): Parsed<number[]> =>
  values.parse(z.array(z.int()).min(1).max(MOST), values.json("ids"));
