import { perDerivation, sentence, named } from "./per-derivation.ts";

export const withheldDerivation = perDerivation(
  "withheld-derivation",
  "warning",
  "A derivation needs a plug-in of the corpus that has not been allowed.",
  "A plug-in in `plugins/` is code by whoever wrote the corpus. It never runs before you allow that very file, and then only in a sandbox without network, files or clock. Read it, then allow it with `variorum compute --allow-plugin NAME`; after any change of the file it is asked for again. Until then the derivation has no number and bears on nothing.",
  (derived, { graph }) =>
    derived.status === "withheld"
      ? [
          {
            message: `${named(graph, derived)} was not computed. ${sentence(derived.why ?? "")}`,
            path: ["plugin"],
          },
        ]
      : [],
);
