import type { ArabicCatalogue } from "../../../../base/text/said/arabic.ts";
import { deskSaid } from "./desk.ts";
import { explainSaid } from "./explain.ts";
import { hostSaid } from "./host.ts";
import { judgedSaid } from "./judged/index.ts";
import { labelSaid } from "./label.ts";
import { numbersSaid } from "./numbers.ts";
import { pluginsSaid } from "./plugins/index.ts";
import { readSaid } from "./read/index.ts";
import { rulesSaid } from "./rules/index.ts";
import { shownSaid } from "./shown/index.ts";
import { toldSaid } from "./told/index.ts";

/** Every sentence of the core in Arabic, by its English. */
export const arabicSaid: ArabicCatalogue = {
  ...labelSaid,
  ...numbersSaid,
  ...pluginsSaid,
  ...readSaid,
  ...rulesSaid,
  ...explainSaid,
  ...deskSaid,
  ...hostSaid,
  ...judgedSaid,
  ...shownSaid,
  ...toldSaid,
};
