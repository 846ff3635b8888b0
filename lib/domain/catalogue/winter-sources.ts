import type { Source } from "#lib/domain/catalogue-types";

/** The sources that the winter worksheet and its cautions name, by id. Read as openings or whole pages; none was checked further. */
export const WINTER_SOURCES: Readonly<Record<string, Source>> = {
  "UMN-TROTT": {
    title: "Digging dahlias",
    publisher: "University of Minnesota Extension column in the Echo Press",
    address: "http://www.echopress.com/country/gardening/1899702-digging-dahlias-%C2%AD-its-easy-these-tips",
  },
  "GT-LOPEZ25": {
    title: "Secrets for Early Dahlia Cut Flower Harvests (Michigan State University)",
    publisher: "GrowerTalks, 2025",
    address: "https://www.growertalks.com/Article?articleid=27292",
  },
  DSG: {
    title: "Grow Dahlias",
    publisher: "Dahlia Society of Georgia",
    address: "http://dahliasocietyofgeorgia.com/NewSite/index.php/grow-dahlias",
  },
  HANKINS: {
    title: "Production of Dahlias as Cut Flowers",
    publisher: "Virginia State University Cooperative Extension, 2002 or later",
    address: "http://studyres.com/doc/7771884/production-of-dahlias-as-cut-flowers",
  },
  "SARE-FNC24": {
    title: "Assessing Effectiveness of Various Methods for Overwintering Dahlias in Zone 6 (FNC24-1433, Missouri)",
    publisher: "North Central SARE (USDA), proposal; results not seen",
    address: "https://projects.sare.org/sare_project/fnc24-1433/",
  },
  "OSHA-LIFT": {
    title: "NIOSH Lifting Recommendations",
    publisher: "US Occupational Safety and Health Administration",
    address: "https://www.osha.gov/SLTC/etools/poultry/additional_material/niosh.html",
  },
  ORDEQ: {
    title: "Material density in pounds per cubic yard",
    publisher: "Oregon Department of Environmental Quality, 2005, posted to a list",
    address: "https://greenyes.grrn.org/2005/04/msg00009.html",
  },
  ECOTURF: {
    title: "Mulch: cubic yards per 1,000 square feet by depth",
    publisher: "a materials supplier's table (trade; used only for unit arithmetic)",
    address: "http://ecoturfco.com/MulchCalculator.html",
  },
};
