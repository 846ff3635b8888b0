import type { FarmDatabase } from "#db/client";
import { loadSnapshot } from "#db/read/read";

/** What is wrong with a farm's file and the records in it, in words; nothing where it is whole and can be read. */
export function faultsOfRecords(database: FarmDatabase): string[] {
  const sound = database.$client.pragma("integrity_check", { simple: true });
  const read = loadSnapshot(database);
  return [
    ...(sound === "ok" ? [] : [`the farm's file is damaged: ${sound}`]),
    ...(read.ok ? [] : [`the farm cannot be read: ${read.problems[0]?.message}`]),
  ];
}
