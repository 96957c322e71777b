import { fromMarkdown } from "mdast-util-from-markdown";
import { gfmFootnoteFromMarkdown } from "mdast-util-gfm-footnote";
import { gfmFootnote } from "micromark-extension-gfm-footnote";
import { finding } from "../../base/finding.ts";
import type { Finding, Span } from "../../base/finding.ts";
import { coded, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { prosePath } from "../source-file.ts";
import type { SourceFile } from "../source-file.ts";
import { blocksIn } from "./blocks.ts";
import type { Reading } from "./blocks.ts";
import type { ProsePiece, ProseRead } from "./prose.ts";
import { pieceHandling, pieceSyntax } from "./syntax.ts";
import type { FootnoteDefinition, Nodes, Root } from "./tree.ts";

/** More than this nobody writes by hand, and reading it would take long: levels of nesting, lines of a paragraph, signs in it. */
const most = { levels: 50, lines: 2000, signs: 2000 };

/** Reads a file of prose in CommonMark with notes at the foot; what a review cannot show is left out and told. */
export function readProse({ path, text }: SourceFile): ProseRead {
  const name = prosePath.exec(path)?.[1] ?? path;
  const findings: Finding[] = [];
  const pieces: ProsePiece[] = [];
  // A byte-order mark is no sign of the text, and places are counted with it.
  const mark = text.startsWith("\uFEFF") ? 1 : 0;
  const unreadable = (message: Said): ProseRead => {
    findings.push(finding("unreadable-file", message, { file: path, start: 0, end: 0 }));
    return { prose: { name, file: path, blocks: [], pieces }, findings };
  };
  const odd = oddness(text);
  if (odd !== null) return unreadable(odd);
  const root = treeOf(text.slice(mark));
  const known = knownIn(root);
  if (known.depth > most.levels) return unreadable(tooDeep);
  const at = (node: Nodes): Span => ({
    file: path,
    start: mark + (node.position?.start.offset ?? 0),
    end: mark + (node.position?.end.offset ?? 0),
  });
  const warn = (message: Said, node: Nodes): void => {
    findings.push(finding("bad-value", message, at(node), { level: "warning" }));
  };
  const leaveOut = (what: Text, node: Nodes): void =>
    warn(say`Unexpected ${what}, expected words: it is left out of the review`, node);
  const noted = new Set<string>();
  const reading: Reading = { ...known, at, noted, pieces, findings, leaveOut, inNote: false };
  const blocks = blocksIn(root.children, reading);
  for (const [identifier, one] of known.notes) {
    if (noted.has(identifier)) continue;
    const label = coded(`[^${one.label ?? identifier}]`);
    warn(say`Unexpected note ${label} that nothing leads to, expected ${label} in the text`, one);
  }
  return { prose: { name, file: path, blocks, pieces }, findings };
}

const tooDeep = say`Unexpected nesting deeper than ${String(most.levels)}, expected paragraphs, lists and quotations`;

/** What makes a text one that no scholar wrote; null of any other. */
function oddness(text: string): Said | null {
  const signsAtStart = /^[ \t>*+-]*/u;
  for (const paragraph of text.split(/\n[ \t]*\r?\n/u)) {
    const lines = paragraph.split("\n");
    const signs = paragraph.match(/[*_[\]`]/gu)?.length ?? 0;
    if (lines.length > most.lines || signs > most.signs)
      return say`Unexpected paragraph that never ends, expected an empty line`;
    if (
      lines.some(
        (line) =>
          (signsAtStart.exec(line)?.[0].match(/[>*+-]/gu)?.length ?? 0) > most.levels &&
          !/^[ \t*-]*\r?$/u.test(line),
      )
    )
      return tooDeep;
  }
  return null;
}

/** The tree of a text in CommonMark with notes and pieces. */
function treeOf(text: string): Root {
  return fromMarkdown(text, {
    extensions: [gfmFootnote(), pieceSyntax],
    mdastExtensions: [gfmFootnoteFromMarkdown(), pieceHandling],
  });
}

/** The notes of a tree and the addresses that links in it name, the first of each name, and how deep it is. */
function knownIn(root: Root): Pick<Reading, "notes" | "addresses"> & { readonly depth: number } {
  const notes = new Map<string, FootnoteDefinition>();
  const addresses = new Map<string, string>();
  let depth = 0;
  for (let level: readonly Nodes[] = [root]; level.length > 0; depth++) {
    for (const node of level) {
      if (node.type === "footnoteDefinition" && !notes.has(node.identifier)) notes.set(node.identifier, node);
      if (node.type === "definition" && !addresses.has(node.identifier))
        addresses.set(node.identifier, node.url);
    }
    level = level.flatMap((node) => ("children" in node ? node.children : []));
  }
  return { notes, addresses, depth };
}
