import { z } from "zod";
import type { WhatIf } from "#lib/domain/what-if";

/** Beside the farm as it stands there is room for three. */
export const COMPARED_AT_MOST = 3;

const query = z.object({
  with: z
    .union([z.string(), z.array(z.string())])
    .optional()
    .catch(undefined),
});

/**
 * The what-ifs that an address asks to see ("?with=1&with=3"), in its order and each once, else those made last; how many more than fit were
 * asked for.
 */
export function comparedOf(parameters: Record<string, unknown>, whatIfs: readonly WhatIf[]) {
  const asked = query.parse(parameters).with;
  if (asked === undefined) return { compared: whatIfs.slice(-COMPARED_AT_MOST), leftOutCount: 0 };
  const ids = [...new Set(Array.isArray(asked) ? asked : [asked])];
  const found = ids.flatMap((id) => whatIfs.find((whatIf) => String(whatIf.id) === id) ?? []);
  return {
    compared: found.slice(0, COMPARED_AT_MOST),
    leftOutCount: Math.max(0, found.length - COMPARED_AT_MOST),
  };
}
