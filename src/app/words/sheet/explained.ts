import { explainedTitles } from "../../../show/pages/explained.ts";
import type { ExplainedRole } from "../../../show/pages/explained.ts";
import { arabicExplained } from "../arabic/sheet/explained.ts";
import { told } from "../reader/told.ts";

/** Words of what bears out a standing, on a sheet. */
export const explainedWords = {
  titles: explainedTitles,
  ...told(
    {
      roles: {
        for: "argument for it",
        from: "from",
        used: "computed on",
        against: "against it",
        answered: "an objection that fails",
        member: null,
        settler: null,
        lack: null,
      } satisfies Readonly<Record<ExplainedRole, string | null>>,
      all: "Which they are",
    },
    arabicExplained,
  ),
};
