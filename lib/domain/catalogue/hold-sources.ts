import type { Source } from "#lib/domain/catalogue-types";

/** Sources of hold life and cutting stage. */
export const HOLD_SOURCES = {
  "DOLE-DAHLIA": {
    title: "Post-harvest handling of cut Dahlia, Lupinus, Papaver, and Rudbeckia",
    publisher: "peer-reviewed journal (ASHS; name and year not shown in the record seen)",
    address:
      "https://discovery.researcher.life/article/post-harvest-handling-of-cut-dahlia-lupinus-papaver-and-rudbeckia/4bfd59f06a04314bac056d89fb4e5aad",
  },
  "AHMAD-CEL": {
    title:
      "Optimal postharvest handling protocols for Celosia argentea var. cristata 'Fire Chief' and Antirrhinum majus 'Chantilly Yellow'",
    publisher: "peer-reviewed journal, 2014 (name not shown in the record seen)",
    address: "http://daneshyari.com/article/4566846",
  },
  "ASHS-WETDRY": {
    title: "Wet versus dry storage of marigold, rose, zinnia, lisianthus (title not shown in the record seen)",
    publisher: "American Society for Horticultural Science",
    address:
      "http://globalauthorid.com/WebPortal/ArticleView?wd=71CFC3528C5368D42C90BCE1B0BB1FAE7B516C6D855650AE141D359CA6980622",
  },
  "ASHS-SIX": {
    title: "Postharvest attributes of six specialty cut flower species",
    publisher: "HortScience (ASHS); its abstract read in a list, no page of its own seen",
    address: "",
  },
  "ZINNIA-2022": {
    title: "Improving hydration and vase life of cut Zinnia",
    publisher: "Scientia Horticulturae 293:110661, 2022",
    address: "https://doi.org/10.1016/j.scienta.2021.110661",
  },
  "SUNF-2023": {
    title: "Postharvest handling and vase life of cut sunflower",
    publisher: "Canadian Journal of Plant Science, 2023",
    address: "https://ci.lib.ncsu.edu/citation/1026733",
  },
  "STOCK-VB": {
    title: "Postharvest handling procedures of Matthiola incana 'Vivas Blue'",
    publisher: "peer-reviewed journal (name and year not shown in the record seen)",
    address:
      "https://discovery.researcher.life/article/postharvest-handling-procedures-of-matthiola-incana-vivas-blue/d1fb230131ee3bfa8a8652f8e58cada0",
  },
  "PEONY-2020B": {
    title:
      "Impacts of carbohydrate pulses and short-term sub-zero temperatures on vase life and quality of cut Paeonia lactiflora hybrids",
    publisher: "Postharvest Biology and Technology, 2020",
    address: "https://ci.lib.ncsu.edu/citations/486167",
  },
  "TULIP-2022": {
    title: "Postharvest Handling Techniques for Long-term Storage of Cut Tulip and Dutch Iris",
    publisher: "HortTechnology 32(3):263-274, 2022",
    address: "https://journals.ashs.org/horttech/view/journals/horttech/32/3/article-p263.xml",
  },
  "NARC-STORE": {
    title: "Optimal storage protocols for cut Narcissus tazetta and Polianthes tuberosa stems",
    publisher: "peer-reviewed journal (name and year not shown in the record seen)",
    address:
      "https://discovery.researcher.life/article/optimal-storage-protocols-for-cut-narcissus-tazetta-and-polianthes-tuberosa-stems/38c0dd0cf06039d7bbadb56e5cd46f43",
  },
  "FORREST-1991": {
    title: "Post-harvest treatment of cut foliage",
    publisher: "Acta Horticulturae 298:255-262 (ISHS), 1991",
    address: "https://www.ishs.org/ishs-article/298_30",
  },
  "HYD-STAGE": {
    title: "Differences in vase lives of cut hydrangea flowers harvested at different developmental stages",
    publisher: "peer-reviewed journal (Okayama University record)",
    address:
      "https://okayama.elsevierpure.com/en/publications/differences-in-vase-lives-of-cut-hydrangea-flowers-harvested-at-d",
  },
  "UCD-SPEA": {
    title: "Sweet Pea: Recommendations for Maintaining Postharvest Quality",
    publisher: "University of California Davis Postharvest Technology Center",
    address:
      "https://postharvest.ucdavis.edu/Commodity_Resources/Fact_Sheets/Datastores/Ornamentals_English/index.cfm?uid=34&ds=801",
  },
  "CARGO-ANEM": {
    title: "Anemone (cut flower) storage conditions",
    publisher: "Cargo Handbook, transport reference",
    address: "https://cargohandbook.com/index.php?oldid=7063&title=Anemone",
  },
  "WILLS-1998": {
    title:
      "Crop Post-Harvest: Science and Technology, Table 19.2, Storage Conditions for Selected Cut Flowers (data of 1998)",
    publisher: "Blackwell textbook, read from a reproduction of the table",
    address: "http://what-when-how.com/Tutorial/topic-753gbl/Crop-Post-Harvest-Science-and-Technology-470.html",
  },
  "GPN-SUBZERO": {
    title: "Longer-lasting cut flowers: the subzero solution",
    publisher: "trade magazine article, about 2024, read from a copy",
    address: "https://gold-flower.ir/longer-lasting-cut-flowers-the-subzero-solution/",
  },
} satisfies Record<string, Source>;
