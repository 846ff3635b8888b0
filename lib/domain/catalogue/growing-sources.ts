import type { Source } from "#lib/domain/catalogue-types";

/** Sources of bloom windows, yields, prices and the storing of tubers. */
export const GROWING_SOURCES = {
  "ASCFG-2018VT": {
    title: "Extending Postharvest Vase Life of Dahlia",
    publisher: "Association of Specialty Cut Flower Growers (ASCFG), 2018",
    address: "https://ascfgmembers.org/publications/2018-summer-extending-postharvest-vase-life-of-dahlia/",
  },
  "ASCFG-2018DT": {
    title: "2018 ASCFG Dahlia Cut Flower Trial Report",
    publisher: "ASCFG and NC State University, 2019",
    address: "https://ascfgmembers.org/publications/2019-winter-2019-ascfg-dahlia-trial-report/",
  },
  "ASCFG-2021": {
    title: "Tackling the three challenges of dahlia production",
    publisher: "ASCFG Research Foundation, 2021",
    address: "https://ascfgmembers.org/publications/2021-fall-dahlia-research/",
  },
  "ASCFG-2009S": {
    title: "2009 ASCFG Cut Flower Seed Trials",
    publisher: "ASCFG and NC State University, 2010",
    address: "https://ascfgmembers.org/publications/2010-winter-2009-ascfg-cut-flower-seed-trials/",
  },
  "ASCFG-2012S": {
    title: "2012 ASCFG Cut Flower Seed Trials",
    publisher: "ASCFG and NC State University, 2013",
    address: "https://ascfgmembers.org/publications/2013-winter-2012-ascfg-cut-flower-seed-trials/",
  },
  "ASCFG-P2019": {
    title: "2019 ASCFG Perennial Trial Report",
    publisher: "ASCFG and NC State University, 2020",
    address: "https://ascfgmembers.org/publications/2020-winter-2019-ascfg-perennial-trial-report/",
  },
  "ROSE-MS": {
    title: "Field Performance of Cut Flower Rose Cultivars in Mississippi",
    publisher: "HortTechnology 18(4):734, 2008, abstract",
    address: "https://journals.ashs.org/horttech/view/journals/horttech/18/4/article-p734.xml",
  },
  "SUN-2008W": {
    title: "Sunflower Daylength Screening Test, cultural practices studies 2007",
    publisher: "Cornell University, ASCFG, 2008",
    address: "https://ascfgmembers.org/publications/2008-winter-cornell-copia/",
  },
  "ZIN-MCM": {
    title: "Seed profile: zinnias",
    publisher: "McMaster University library guide",
    address: "https://libguides.mcmaster.ca/seed-profiles/zinnias",
  },
  "ASCFG-2010S": {
    title: "2010 ASCFG Seed Trial Results",
    publisher: "ASCFG / NC State University",
    address: "https://vdocuments.mx/the-outer-petals-of-zinnia-aqueen-red-limea-2010-ascfg-seed-trial-results-the.html",
  },
  "ASCFG-2013S": {
    title: "2013 ASCFG Cut Flower Seed Trials",
    publisher: "ASCFG / NC State University",
    address: "https://dokumen.tips/documents/2013-ascfg-cut-flower-seed-trials.html",
  },
  "ASCFG-2014S": {
    title: "2014 ASCFG Cut Flower Seed Trials",
    publisher: "ASCFG / NC State University",
    address:
      "https://pdfslide.net/documents/2014-ascfg-cut-flower-seed-trials-nc-state-2014-ascfg-cut-flower-seed-trials.html",
  },
  "ADS-STORE": {
    title: "Digging, Dividing, and Storing Tubers",
    publisher: "American Dahlia Society",
    address: "https://www.dahlia.org/docsinfo/articles/digging-dividing-and-storing-tubers/embed/",
  },
  "ATTRA-DAHLIA": {
    title: "What information can you give me on growing dahlias for cut flowers?",
    publisher: "National Center for Appropriate Technology (ATTRA), about 2010",
    address: "https://attra.ncat.org/what_information_can_you_give_me_on_grow_2/",
  },
  "ASKEXT-NC": {
    title: "Overwintering dahlias, Forsyth County, North Carolina (question 695828)",
    publisher: "Ask Extension (Cooperative Extension), 2020",
    address: "https://ask.extension.org/questions/695828",
  },
  "ANEM-2023": {
    title: "Anemone Cut Flower Timing, Yield, and Quality in a High-Elevation Field and High Tunnel",
    publisher: "Horticulturae 9(1):2 (MDPI), 2023",
    address: "https://doi.org/10.3390/horticulturae9010002",
  },
  "USU-ANEM": {
    title: "Anemone Cut Flower Production in Utah",
    publisher: "Utah State University Extension, Paper 2334",
    address: "https://digitalcommons.usu.edu/extension_curall/2334",
  },
  "USU-RANU": {
    title: "Ranunculus Cut Flower Production in Utah",
    publisher: "Utah State University Extension; its abstract read in a list, no page of its own seen",
    address: "",
  },
  "USU-RW2021": {
    title: "Evaluating Anemone and Ranunculus Production Strategies in Utah (poster)",
    publisher: "Utah State University Research Week, 2021",
    address: "https://digitalcommons.usu.edu/researchweek/ResearchWeek2021/All2021/224",
  },
  "USU-LISI": {
    title: "Lisianthus Cut Flower Production in Utah",
    publisher: "Utah State University Extension",
    address: "https://issuu.com./usuextension/docs/lisianthus_cut_flower_production_in_utah",
  },
  "USU-DELTH": {
    title: "Delphinium and larkspur production in Utah (thesis)",
    publisher: "Utah State University, 2025",
    address: "https://digitalcommons.usu.edu/etd2023/528",
  },
  "WIEN-2016": {
    title: "Lisianthus pinching and plant population in high tunnel and field, abstract 24402",
    publisher: "American Society for Horticultural Science, annual conference 2016",
    address: "https://ashs.confex.com/ashs/2016/webprogramarchives/Paper24402.html",
  },
  "SNAP-LEWIS": {
    title: "Snapdragon in high tunnel and field, North Logan, Utah, 2018 and 2019 (title not shown in the record seen)",
    publisher: "American Society for Horticultural Science; its abstract read in a list, no page of its own seen",
    address: "",
  },
  "PEONY-USU": {
    title:
      "'Coral Charm' peony in high tunnel and field, North Logan, Utah, 2019 to 2021 (title not shown in the record seen)",
    publisher: "American Society for Horticultural Science; its abstract read in a list, no page of its own seen",
    address: "",
  },
  "NCSU-PEONYQA": {
    title: "Peony webinar questions and answers",
    publisher: "NC State University, cut flowers program, read from a copy",
    address: "https://docslib.org/doc/268955/peony-questions-and-answers",
  },
  "LATE-TUNNEL": {
    title: "Late-season cut flowers in high tunnel and field, Midwest (title not shown in the record seen)",
    publisher: "American Society for Horticultural Science; its abstract read in a list, no page of its own seen",
    address: "",
  },
  "CORNELL-2010": {
    title: "Cut Flower Cultural Practice Studies and Variety Trials 2010",
    publisher: "Cornell University",
    address:
      "https://dokumen.tips/documents/the-2010-cut-flower-trials-cornell-a-wien-a-cutflowers-a-reports-a-2010.html",
  },
  "CORNELL-SUN": {
    title: "Cut flower cultural practices and variety trials: sunflower day length",
    publisher: "Cornell University",
    address: "https://flowerbulbs.cornell.edu/cutflowers/",
  },
  UMAINE: {
    title: "Perennials: Flowering Seasons",
    publisher: "University of Maine Cooperative Extension, Gardening Manual",
    address: "https://extension.umaine.edu/gardening/manual/perennials-flowering-seasons/",
  },
  "MBG-CLAY": {
    title: "Plants for clay soil: annuals and bulbs",
    publisher: "Missouri Botanical Garden, St. Louis",
    address:
      "https://www.missouribotanicalgarden.org/gardens-gardening/your-garden/help-for-the-home-gardener/advice-tips-resources/visual-guides/ps-plants-for-clay-soil-annuals-and-bulbs",
  },
  LSU: {
    title: "Field-Grown Cut Flowers for Louisiana: Annuals",
    publisher: "Louisiana State University AgCenter",
    address:
      "https://www.lsuagcenter.com/topics/lawn_garden/ornamentals/floriculture/cut_flowers/field-grown-cut-flowers-for-louisiana/annuals",
  },
} satisfies Record<string, Source>;
