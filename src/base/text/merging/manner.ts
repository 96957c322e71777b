/** What of a merged text is no line of it: how its lines end, whether the last one does, and the byte-order mark. */
export interface Manner {
  /** A text's lines without its manner: each ends in `\n`, the last one too. */
  readonly lines: (text: string) => readonly string[];
  /** What is written for `\n`. */
  readonly end: string;
  readonly mark: string;
  /** The end of the merged text as it is to be. */
  readonly finish: (text: string) => string;
}

const byteOrderMark = "\ufeff";

/** The manner of two texts made from a third: where one side changed it, as that side has it. */
export function mannerOf(base: string, mine: string, theirs: string): Manner {
  const settled = (of: (text: string) => string | null, usual: string): string => {
    const [was, one, two] = [of(base), of(mine), of(theirs)];
    if (was === null)
      return one === two ? (one ?? usual) : one === null || two === null ? (one ?? two ?? usual) : usual;
    return (one ?? was) === was ? (two ?? was) : (one ?? was);
  };
  // Where one text mixes its line ends, each is part of its line.
  const kept = [base, mine, theirs].some((text) => lineEndOf(text) === "mixed");
  const last = settled((text) => (text === "" ? null : text.endsWith("\n") ? "\n" : ""), "\n");
  return {
    lines: (text) => {
      const body = text.startsWith(byteOrderMark) ? text.slice(1) : text;
      const plain = kept ? body : body.replaceAll("\r\n", "\n");
      return plain === "" ? [] : `${plain}${plain.endsWith("\n") ? "" : "\n"}`.split(/(?<=\n)/u);
    },
    end: kept ? "\n" : settled(lineEndOf, "\n"),
    mark: settled((text) => (text === "" ? null : text.startsWith(byteOrderMark) ? byteOrderMark : ""), ""),
    finish: (text) => (last === "" ? text.replace(/\r?\n$/u, "") : text),
  };
}

/** How the lines of a text end; null where it has but one. */
function lineEndOf(text: string): "\n" | "\r\n" | "mixed" | null {
  const all = text.split("\n").length - 1;
  const windows = text.split("\r\n").length - 1;
  return all === 0 ? null : windows === 0 ? "\n" : windows === all ? "\r\n" : "mixed";
}
