import type { Source } from "#lib/domain/catalogue-types";

/** Sources of hardiness zones, climates, frost dates and cautions. */
export const GROUND_SOURCES = {
  "USNA-ZONES": {
    title: "USDA Plant Hardiness Zone Map, zone details (1990 map)",
    publisher: "US Department of Agriculture, 1990, read from a reproduction of the table",
    address: "http://www.regannursery.com/getting_started/usda/zone_details.html",
  },
  "NCEI-FREEZE": {
    title: "Last freeze/frost probability (definition)",
    publisher: "NOAA National Centers for Environmental Information, dataset description",
    address: "http://wdcosf.fh-potsdam.de/resources/gcmd-22b3623a-66c6-4616-8a6a-139ce119f672/",
  },
  "CCD-NORM": {
    title: "Comparative Climatic Data: normal daily maximum and minimum temperature, 1981 to 2010",
    publisher: "NOAA National Centers for Environmental Information, 2018",
    address: "https://github.com/noaaccd/noaaccd.github.io",
  },
  "NCEI-ALB": {
    title: "U.S. Climate Normals 1991-2020, Albany International Airport, New York (USW00014735)",
    publisher: "NOAA National Centers for Environmental Information; read as quoted in public code, not at the source",
    address: "",
  },
  "NWS-FRK": {
    title: "Frost/Freeze Information for Frankfort, Kentucky",
    publisher: "NOAA National Weather Service, normals of 1981-2010",
    address: "https://www.weather.gov/lmk/frankfort_freeze_info",
  },
  "NWS-SDF": {
    title: "Frost/Freeze Information for Louisville, Kentucky",
    publisher: "NOAA National Weather Service, normals of 1981-2010",
    address: "https://www.weather.gov/lmk/louisville_freeze_info",
  },
  "NWS-ILM": {
    title: "Wilmington, North Carolina Spring and Fall Freeze Statistics",
    publisher: "NOAA National Weather Service, since 1950",
    address: "https://www.weather.gov/ilm/freezeWilmington",
  },
  "UDEL-FROST": {
    title: "Frost dates, Georgetown research center (data to 1970)",
    publisher: "University of Delaware",
    address: "http://www.rec.udel.edu/misc/Frost%20dates.htm",
  },
  "CSU-EDIBLE": {
    title: "Edible Flowers, fact sheet 7.237",
    publisher: "Colorado State University Extension, 2020",
    address: "http://www.ext.colostate.edu/pubs/Garden/07237.html",
  },
  MDPC: {
    title: "What You Need to Know about Poisonous Plants",
    publisher: "Maryland Poison Center, 2012, read from a copy",
    address:
      "http://perryhallms.bcps.org/UserFiles/Servers/Server_4202216/File/MDPoisonCenterlPoisonousPlants_2012.txt",
  },
  "HOME-POISON": {
    title: "Poisonous Plants around the Home",
    publisher: "publisher not shown in the copy seen",
    address:
      "https://docslib.org/doc/12803669/poisonous-plants-around-the-home-for-suspected-poisoning-call-1-800-222-1222-or-911",
  },
  "CUTIS-DAFF": {
    title: "Botanical Briefs: Daffodils (Narcissus Species)",
    publisher: "Cutis, 2023",
    address:
      "https://mdedge9-ma1.mdedge.com/dermatology/article/260431/contact-dermatitis/botanical-briefs-daffodils-narcissus-species",
  },
  HAZMAP: {
    title: "Allergens, flowers",
    publisher: "Haz-Map (occupational exposure database)",
    address: "https://haz-map.com/Agents/1861",
  },
} satisfies Record<string, Source>;
