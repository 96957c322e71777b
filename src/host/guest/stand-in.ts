import type { Figure, Plugin } from "../../plugin.ts";
import type { Declarations } from "./contract.ts";
import type { Declared } from "./guest.ts";
import { named } from "./names.ts";

/** What is kept of a guest that cannot be used: enough to tell which one it is. */
const nothingKnown: Omit<Declarations, "id"> = {
  version: "0",
  title: "",
  doc: "",
  sources: [],
  inputs: [],
  parameters: [],
  numbers: [],
  cautions: [],
  examples: [],
  figure: "undefined",
};

/**
 * A guest as a value among the plug-ins: what it declared, and figure and sentence as they were made when it computed.
 * It computes nothing itself; its version has the hash of its file, so that no other file's numbers pass for its own.
 */
export function standInFor({ name, hash, about, trouble }: Declared): Plugin {
  const { version, title, doc, sources, inputs, parameters, numbers, cautions, examples } =
    about ?? nothingKnown;
  return {
    id: name,
    version: `${version}+${hash}`,
    title: title === "" ? name : title,
    doc,
    sources,
    inputs,
    parameters,
    numbers,
    cautions,
    examples,
    guest: { hash, trouble },
    compute: () => {
      throw new Error(`The plug-in \`${name}\` of this corpus runs in its sandbox alone`);
    },
    figure: ({ data }, _, naming) => named((data as unknown as Made).figure, naming),
    // What it says of single measurements and of all together is one text, so it is told only where all may be told.
    sentence: ({ data }, _, naming, tells) =>
      tells === "together" || (data as unknown as Made).sentence === ""
        ? `${title === "" ? name : title} was computed by a plug-in of this corpus; its own words are left out, since some of what it read is withheld.`
        : named((data as unknown as Made).sentence, naming),
  };
}

interface Made {
  readonly figure: Figure;
  readonly sentence: string;
}
