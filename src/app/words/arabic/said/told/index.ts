import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { applicationSaid } from "./application.ts";
import { dataSaid } from "./data.ts";
import { figuresSaid } from "./figures.ts";
import { reviewSaid } from "./review/index.ts";
import { talkSaid } from "./talk.ts";
import { withholdingSaid } from "./withholding.ts";
import { writingSaid } from "./writing.ts";
import { makingSaid } from "./making.ts";

/** What is said in texts that are written from the corpus. */
export const toldSaid: ArabicCatalogue = {
  ...applicationSaid,
  ...dataSaid,
  ...figuresSaid,
  ...reviewSaid,
  ...talkSaid,
  ...withholdingSaid,
  ...writingSaid,
  ...makingSaid,
};
