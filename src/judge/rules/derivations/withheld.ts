import { say } from "../../../base/text/said/said.ts";
import { quotedLabel } from "../tell.ts";
import { perDerivation, sentence } from "./per-derivation.ts";

export const withheldDerivation = perDerivation(
  "withheld-derivation",
  "warning",
  say`A derivation needs a plug-in of the corpus that has not been allowed.`,
  say`A plug-in in \`plugins/\` is code by whoever wrote the corpus. It never runs before you allow that very file, and then only in a sandbox without network, files or clock. Read it, then allow it with \`variorum compute --allow-plugin NAME\`; after any change of the file it is asked for again. Until then the derivation has no number and bears on nothing.`,
  (derived, { graph }) => {
    if (derived.status !== "withheld") return [];
    const message = say`${quotedLabel(graph, derived.id)} was not computed. ${sentence(derived.why ?? "")}`;
    return [{ message, path: ["plugin"] }];
  },
);
