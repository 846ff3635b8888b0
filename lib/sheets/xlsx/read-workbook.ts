import type { SplitRow } from "../split-rows";
import { cellStyles } from "./cell-styles";
import { readWorksheet, type WorksheetProblem } from "./read-worksheet";
import { type Room, TooMuch } from "./room";
import type { DateSystem } from "./serial-day";
import { sharedTexts } from "./shared-texts";
import { attributeIn, walkXml } from "./walk-xml";

/** A sheet of a workbook: its name, its rows with the lines that they stand on, and cells that cannot be read. */
export type Worksheet = {
  readonly name: string;
  readonly rows: readonly SplitRow[];
  readonly problems: readonly WorksheetProblem[];
};

/** The text of a part of the workbook's zip by its path; undefined when there is none. */
type PartOf = (path: string) => string | undefined;

/** The most sheets of a workbook: a farm has twelve. */
const MOST_SHEETS = 1000;

/**
 * The sheets of a workbook in the open format of spreadsheets, those that are hidden or empty left out. Values are read, never formulas: a cell
 * with a formula says what its program last made of it. Days come as text, "2027-06-12", from the serial numbers of cells that show a date.
 * Throws Error where a part is missing or not well formed, and TooMuch where there is more in it than `room` has or any farm needs.
 *
 * Source: ECMA-376 Part 1, 18.2 (workbook), 18.3 (worksheet), 18.4 (shared strings), 18.8 (styles); Part 2, 9.3 (relationships)
 */
export function readWorkbook(partOf: PartOf, room: Room): Worksheet[] {
  const workbookPath = relationsOf(partOf, "").find(({ type }) => type.endsWith("/officeDocument"))?.path;
  if (!workbookPath) throw new Error("no workbook is in it");
  const relations = relationsOf(partOf, workbookPath);
  const relationOf = new Map(relations.map((relation) => [relation.id, relation]));
  const { sheets, system } = readBook(needed(partOf, workbookPath));
  if (sheets.length > MOST_SHEETS) throw new TooMuch();
  const partOfType = (type: string) => {
    const path = relations.find((relation) => relation.type.endsWith(type))?.path;
    return path === undefined ? undefined : needed(partOf, path);
  };
  const about = {
    texts: sharedTexts(partOfType("/sharedStrings")),
    shownAs: cellStyles(partOfType("/styles")),
    system,
    room,
  };
  return sheets.flatMap(({ name, relationId }) => {
    const relation = relationOf.get(relationId);
    if (!relation) throw new Error(`nothing leads to the sheet ${name}`);
    // A chart stands among the sheets too, and has no cells.
    if (!relation.type.endsWith("/worksheet")) return [];
    const part = needed(partOf, relation.path);
    room.take(part.length);
    const { rows, problems } = readWorksheet(part, about);
    return rows.length + problems.length > 0 ? [{ name, rows, problems }] : [];
  });
}

function needed(partOf: PartOf, path: string): string {
  const part = partOf(path);
  if (part === undefined) throw new Error(`${path} is missing`);
  return part;
}

type Book = { readonly sheets: readonly { name: string; relationId: string }[]; readonly system: DateSystem };

function readBook(xml: string): Book {
  const sheets: { name: string; relationId: string }[] = [];
  let system: DateSystem = 1900;
  walkXml(xml, {
    open: (name, attributes) => {
      if (name === "workbookPr" && /^(1|true)$/.test(attributes.date1904 ?? "")) system = 1904;
      if (name === "sheet" && (attributes.state ?? "visible") === "visible")
        sheets.push({ name: attributes.name ?? "", relationId: attributeIn(attributes, "id") ?? "" });
    },
  });
  return { sheets, system };
}

type Relation = { readonly id: string; readonly type: string; readonly path: string };

/** What a part leads to, each by its path from the root of the zip. */
function relationsOf(partOf: PartOf, path: string): Relation[] {
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  const xml = partOf(`${folder}_rels/${path.slice(folder.length)}.rels`);
  const relations: Relation[] = [];
  if (xml === undefined) return relations;
  walkXml(xml, {
    open: (name, { Id = "", Type = "", Target = "" }) => {
      if (name === "Relationship") relations.push({ id: Id, type: Type, path: resolved(folder, Target) });
    },
  });
  return relations;
}

function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith("/") ? target : folder + target).split("/"))
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  return steps.join("/");
}
