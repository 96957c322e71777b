import type { Standing } from "../../../../judge/judge.ts";

/** The four standings. */
export const arabicStandings: Readonly<Record<Standing, string>> = {
  stands: "قائم",
  open: "معلّق",
  falls: "ساقط",
  unsupported: "بلا سند",
};
