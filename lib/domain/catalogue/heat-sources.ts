import type { Source } from "#lib/domain/catalogue-types";

/** Sources of how warmth moves bloom, and of what ends it. */
export const HEAT_SOURCES = {
  "SNAP-2015": {
    title:
      "Effect of constant temperatures and natural daylength on flowering time and leaf number of Antirrhinum using the photo-thermal model",
    publisher: "Pakistan Journal of Botany 47(5), 2015, abstract",
    address: "http://www.pakbs.org/pjbot/abstracts/47(5)/15.html",
  },
  BRONDUM: {
    title: "Effects of temperature and photoperiod on Dahlia pinnata 'Royal Dahlietta Yellow'",
    publisher: "American Society for Horticultural Science, 1993; its abstract read in a list, no page of its own seen",
    address: "",
  },
  "USU-DAHLIA": {
    title: "Dahlia Cut Flower Production in Utah",
    publisher: "Utah State University Extension, Paper 2320, 2022, abstract",
    address: "https://digitalcommons.usu.edu/extension_curall/2320",
  },
  "PEO-FORCE": {
    title: "The effect of forcing temperature on peony shoot and flower development",
    publisher: "Peer-reviewed journal (name not shown in the record), abstract",
    address:
      "https://discovery.researcher.life/article/the-effect-of-forcing-temperature-on-peony-shoot-and-flower-development/6025fe2855fb3bfe9bef813688403aaa",
  },
  "ZIN-MS2008": {
    title: "Evaluation of zinnia cultivars for field grown cut flower production",
    publisher: "Journal of Applied Horticulture 10(1), 2008, abstract",
    address: "https://doi.org/10.37855/jah.2008.v10i01.13",
  },
  "ROSE-MINI": {
    title:
      "Extension of a thermal unit model to represent nonlinearities in temperature response of miniature rose development",
    publisher: "American Society for Horticultural Science, abstract",
    address:
      "https://discovery.researcher.life/article/extension-of-a-thermal-unit-model-to-represent-nonlinearities-in-temperature-response-of-miniature-rose-development/7866279919833a11bbc6129cfc3c9b5e",
  },
  "GLAD-2017": {
    title: "Cardinal temperatures for planting-emergence phase in gladiolus",
    publisher: "Ciência Rural 47 (SciELO), 2017, abstract",
    address: "http://www.scielo.br/scielo.php?script=sci_arttext&pid=S0103-84782017001000201",
  },
} satisfies Record<string, Source>;
