import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { bibliographySaid } from "./bibliography.ts";
import { fieldsSaid } from "./fields.ts";
import { incomingSaid } from "./incoming.ts";
import { linksSaid } from "./links.ts";
import { looksSaid } from "./looks.ts";
import { recordsSaid } from "./records.ts";
import { settingsSaid } from "./settings.ts";
import { useSaid } from "./use.ts";
import { valuesSaid } from "./values.ts";
import { yamlSaid } from "./yaml.ts";

/** What reading a corpus and tying it together says. */
export const readSaid: ArabicCatalogue = {
  ...useSaid,
  ...valuesSaid,
  ...recordsSaid,
  ...yamlSaid,
  ...linksSaid,
  ...bibliographySaid,
  ...incomingSaid,
  ...fieldsSaid,
  ...settingsSaid,
  ...looksSaid,
};
