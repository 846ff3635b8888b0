import { useContext, useState } from "react";
import { FarmRevision } from "../../ui/farm-revision.client";

/**
 * The revision of the farm that what stands in an editor was read from. The editor keeps its content while the page is made again, so it goes
 * along with the page only while the farm holds what the editor began with, or what stands in it now; else somebody has saved meanwhile.
 */
export function useRevisionRead(held: unknown, edited: unknown): number | undefined {
  const pageRevision = useContext(FarmRevision);
  const heldNow = JSON.stringify(held);
  const [read, setRead] = useState({ held: heldNow, revision: pageRevision });
  if (read.revision !== pageRevision && (heldNow === read.held || heldNow === JSON.stringify(edited)))
    setRead({ held: heldNow, revision: pageRevision });
  return read.revision ?? undefined;
}
