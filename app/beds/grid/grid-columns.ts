import type { SheetName } from "#lib/domain/records/sheets";
import type { Units } from "#lib/domain/words";

/** A column of the grid: its heading on the sheet, what people call it, words to choose from, and the unit of a bare number. */
export type GridColumn = {
  readonly heading: string;
  readonly label: string;
  readonly choices?: readonly string[];
  readonly bareUnit?: string;
};

/** One of the two grids: which sheet it fills. */
export type GridOf = { readonly sheet: SheetName; readonly title: string; readonly columns: readonly GridColumn[] };

type Known = {
  readonly units: Units;
  readonly beds: readonly string[];
  readonly crops: readonly string[];
  readonly varieties: readonly string[];
  readonly colours: readonly string[];
  readonly treatments: readonly string[];
};

export const plantingsGrid = ({ beds, crops, varieties, colours, treatments }: Known): GridOf => ({
  sheet: "plantings",
  title: "Plantings",
  columns: [
    { heading: "bed", label: "Bed", choices: beds },
    { heading: "crop", label: "Crop", choices: crops },
    { heading: "variety", label: "Variety", choices: varieties },
    { heading: "colour", label: "Colour, if new", choices: colours },
    { heading: "season", label: "Season" },
    { heading: "treatment", label: "How it is grown", choices: treatments },
    { heading: "planted_on", label: "Planted or sown on" },
    { heading: "plants", label: "Plants" },
  ],
});

/** Bed sizes are typed in the farm's units; the sheet has metres. */
export const bedsGrid = ({ units }: Known): GridOf => {
  const [unit, bareUnit] = units === "us" ? ["feet", "ft"] : ["metres", "m"];
  return {
    sheet: "beds",
    title: "Beds",
    columns: [
      { heading: "bed", label: "Bed" },
      { heading: "length_m", label: `Length, ${unit}`, bareUnit },
      { heading: "width_m", label: `Width, ${unit}`, bareUnit },
      { heading: "note", label: "Note" },
    ],
  };
};
