import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { choicesSaid } from "./choices.ts";
import { columnsSaid } from "./columns.ts";
import { gridSaid } from "./grid.ts";
import { fieldNamesSaid } from "./fields.ts";
import { pagesSaid } from "./pages.ts";
import { visitSaid } from "./visit.ts";
import { papersSaid } from "./papers.ts";
import { picturesSaid } from "./pictures.ts";

/** What pages and forms show of records. */
export const shownSaid: ArabicCatalogue = {
  ...fieldNamesSaid,
  ...choicesSaid,
  ...columnsSaid,
  ...gridSaid,
  ...pagesSaid,
  ...papersSaid,
  ...picturesSaid,
  ...visitSaid,
};
