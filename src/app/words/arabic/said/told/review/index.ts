import type { ArabicCatalogue } from "../../../../../../base/text/said/arabic.ts";
import { answersSaid } from "./answers.ts";
import { disputeSaid } from "./dispute.ts";
import { evidenceSaid } from "./evidence.ts";
import { searchesSaid } from "./searches.ts";
import { sectionsSaid } from "./sections.ts";

/** What the review of a dispute says. */
export const reviewSaid: ArabicCatalogue = {
  ...sectionsSaid,
  ...searchesSaid,
  ...disputeSaid,
  ...answersSaid,
  ...evidenceSaid,
};
