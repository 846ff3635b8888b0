import { type Copy, copiesFolder, copiesIn } from "#db/copies/copy-name";
import { secondPlace } from "#db/copies/second-place";
import { farmFile } from "./load";

/** The copies there are, newest first, and where they lie. */
export function farmCopies(): { copies: readonly Copy[]; folder: string; secondPlace: string | null } {
  const { file } = farmFile();
  const folder = copiesFolder(file);
  return { copies: copiesIn(folder, file), folder, secondPlace: secondPlace(file) };
}

/** The copy of that name, if it is one of the list. */
export const copyNamed = (name: string): Copy | undefined => farmCopies().copies.find((copy) => copy.name === name);
