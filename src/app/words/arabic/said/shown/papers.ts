import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Where in a paper a passage stands. */
export const papersSaid: ArabicCatalogue = {
  "page {0} of the file": "الصفحة {0} من الملف",
  "page {0} of {1}": "الصفحة {0} من {1}",
  "pages {0} to {1} of the file": "الصفحات {0} إلى {1} من الملف",
  "pages {0} to {1} of {2}": "الصفحات {0} إلى {1} من {2}",
  "a part of page {0} of the file": "جزء من الصفحة {0} من الملف",
  "a part of page {0} of {1}": "جزء من الصفحة {0} من {1}",
  "a part of the picture": "جزء من الصورة",
  "a part of {0}": "جزء من {0}",
  "found by its words": "يُعثر عليه بألفاظه",
  "found by its words in {0}": "يُعثر عليه بألفاظه في {0}",
};
