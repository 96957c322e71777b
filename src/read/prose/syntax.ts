import type { Extension as Handling } from "mdast-util-from-markdown";
import type { Effects, Extension, State } from "micromark-util-types";
import type { Root } from "./tree.ts";

declare module "micromark-util-types" {
  interface TokenTypeMap {
    corpusPiece: "corpusPiece";
    corpusPieceLine: "corpusPieceLine";
  }
}

declare module "mdast" {
  interface PhrasingContentMap {
    corpusPiece: CorpusPiece;
  }
  interface RootContentMap {
    corpusPiece: CorpusPiece;
  }
}

/** What is written between double braces, or between a bracket with an at sign and the next bracket, whole. */
export interface CorpusPiece {
  readonly type: "corpusPiece";
  /** Filled in at its end. */
  written: string;
  readonly position?: Root["position"];
  readonly data?: Root["data"];
}

const [openBracket, closeBracket, openBrace, closeBrace, atSign] = [91, 93, 123, 125, 64];

/** What is read in CommonMark beside its own: `{{claim:ID}}`, `{{number:ID.p}}` and `[@key, p. 12]`. */
export const pieceSyntax: Extension = {
  text: {
    [openBrace]: {
      name: "bracedPiece",
      tokenize: (effects, ok, nok) =>
        between(effects, ok, nok, { opens: openBrace, second: openBrace, closes: closeBrace, closing: 2 }),
    },
    [openBracket]: {
      name: "citedPiece",
      tokenize: (effects, ok, nok) =>
        between(effects, ok, nok, { opens: openBracket, second: atSign, closes: closeBracket, closing: 1 }),
    },
  },
};

/** How what was read so becomes a node, with its text as it is written. */
export const pieceHandling: Handling = {
  enter: {
    corpusPiece(token) {
      this.enter({ type: "corpusPiece", written: "" }, token);
    },
  },
  exit: {
    corpusPiece(token) {
      const node = this.stack.at(-1);
      if (node?.type === "corpusPiece") node.written = this.sliceSerialize(token);
      this.exit(token);
    },
  },
};

/** The signs that a piece stands between: its first two, and how many of the sign that closes it. */
interface Signs {
  readonly opens: number;
  readonly second: number;
  readonly closes: number;
  readonly closing: number;
}

/** Takes a piece from its first sign to its last; over several lines each has a token of its own. */
function between(effects: Effects, ok: State, nok: State, signs: Signs): State {
  let closed = 0;
  const start: State = (code) => {
    effects.enter("corpusPiece");
    effects.enter("corpusPieceLine");
    effects.consume(code);
    return second;
  };
  const second: State = (code) => {
    if (code !== signs.second) return nok(code);
    effects.consume(code);
    return inside;
  };
  const inside: State = (code) => {
    if (code === null || code === signs.opens || (closed > 0 && code !== signs.closes)) return nok(code);
    // The ends of lines have codes below -2.
    if (code < -2) {
      effects.exit("corpusPieceLine");
      effects.enter("lineEnding");
      effects.consume(code);
      effects.exit("lineEnding");
      return next;
    }
    effects.consume(code);
    if (code !== signs.closes || ++closed < signs.closing) return inside;
    effects.exit("corpusPieceLine");
    effects.exit("corpusPiece");
    return ok;
  };
  const next: State = (code) => {
    if (code === null || code < -2) return nok(code);
    effects.enter("corpusPieceLine");
    return inside(code);
  };
  return start;
}
