import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";

/** What the reader of YAML says, in sentences that other languages know. */
const known: Readonly<Record<string, Said>> = {
  "Implicit keys need to be on a single line": say`Implicit keys need to be on a single line`,
  "Implicit keys of flow sequence pairs need to be on a single line": say`Implicit keys of flow sequence pairs need to be on a single line`,
  "Implicit map keys need to be followed by map values": say`Implicit map keys need to be followed by map values`,
  "All mapping items must start at the same column": say`All mapping items must start at the same column`,
  "All sequence items must start at the same column": say`All sequence items must start at the same column`,
  "Sequence item without - indicator": say`Sequence item without - indicator`,
  "Missing closing quote": say`Missing closing quote`,
  "Missing closing 'quote": say`Missing closing 'quote`,
  "Missing , between flow map items": say`Missing , between flow map items`,
  "Missing , between flow sequence items": say`Missing , between flow sequence items`,
  "Missing , or : between flow map items": say`Missing , or : between flow map items`,
  "Missing space after : in flow map": say`Missing space after : in flow map`,
  "Flow map in block collection must be sufficiently indented and end with a }": say`Flow map in block collection must be sufficiently indented and end with a }`,
  "Flow sequence in block collection must be sufficiently indented and end with a ]": say`Flow sequence in block collection must be sufficiently indented and end with a ]`,
  "Block collections are not allowed within flow collections": say`Block collections are not allowed within flow collections`,
  "Unexpected scalar at node end": say`Unexpected scalar at node end`,
  "Unexpected , in flow map": say`Unexpected , in flow map`,
  "Unexpected , in flow sequence": say`Unexpected , in flow sequence`,
};

/** Why a text is no YAML, by the code that its reader gives and what it says. */
export function syntaxMessage(code: string, message: string): Text {
  switch (code) {
    case "TAB_AS_INDENT":
      return say`Unexpected tab as indentation, expected spaces`;
    case "MULTIPLE_DOCS":
      return say`Unexpected second document, expected one document in a file`;
    case "BLOCK_AS_IMPLICIT_KEY":
      return say`Unexpected second colon in one line, expected quotes round a text that holds a colon`;
    case "MISSING_CHAR":
      return say`${told(message.replace(/"quote$/, "quote"))}, expected it before the end`;
    default:
      return told(message);
  }
}

function told(message: string): Text {
  return Object.hasOwn(known, message) ? (known[message] ?? message) : message;
}
