import type { Finding, Span } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { pieceIn } from "./pieces.ts";
import type { ProseBlock, ProseLine, ProsePiece } from "./prose.ts";
import type { FootnoteDefinition, List, Nodes, PhrasingContent, RootContent } from "./tree.ts";

/** What is known and gathered while a text is gone through. */
export interface Reading {
  readonly at: (node: Nodes) => Span;
  readonly notes: ReadonlyMap<string, FootnoteDefinition>;
  /** Where links lead that name an address given elsewhere. */
  readonly addresses: ReadonlyMap<string, string>;
  /** Notes that something led to. */
  readonly noted: Set<string>;
  readonly pieces: ProsePiece[];
  readonly findings: Finding[];
  /** Tells of what a review cannot show. */
  readonly leaveOut: (what: Text, node: Nodes) => void;
  readonly inNote: boolean;
}

/** The blocks of a text, in order. */
export function blocksIn(nodes: readonly RootContent[], reading: Reading): readonly ProseBlock[] {
  return nodes.flatMap((node): readonly ProseBlock[] => {
    switch (node.type) {
      case "heading": {
        const level = node.depth === 1 ? 1 : node.depth === 2 ? 2 : 3;
        return filled({ is: "heading", level, of: lineOf(node.children, reading) });
      }
      case "paragraph":
        return filled({ is: "paragraph", of: lineOf(node.children, reading) });
      case "blockquote":
        return blocksIn(node.children, reading).map((one) =>
          one.is === "paragraph" ? { ...one, is: "quotation" } : one,
        );
      case "list":
        return filled({ is: "list", ordered: node.ordered === true, items: itemsOf(node, reading) });
      case "code":
        return filled({ is: "paragraph", of: node.value === "" ? [] : [node.value] });
      case "html":
        // What is only meant for who writes is no word of the review.
        if (!/^\s*<!--/u.test(node.value)) reading.leaveOut("HTML", node);
        return [];
      default:
        return [];
    }
  });
}

function filled(block: ProseBlock): readonly ProseBlock[] {
  const full = block.is === "list" ? block.items.length > 0 : block.of.length > 0;
  return full ? [block] : [];
}

/** The items of a list, with those of lists in it where they stand; what stands behind such a list is an item of its own. */
function itemsOf(list: List, reading: Reading): readonly ProseLine[] {
  return list.children.flatMap((item) => {
    const items: ProseLine[] = [];
    let own: ProseLine[] = [];
    const close = (): void => {
      if (own.length > 0) items.push(inOne(own));
      own = [];
    };
    for (const block of blocksIn(item.children, reading)) {
      if (block.is !== "list") own.push(block.of);
      else {
        close();
        items.push(...block.items);
      }
    }
    close();
    return items;
  });
}

/** Several lines as one. */
function inOne(lines: readonly ProseLine[]): ProseLine {
  return joined(lines.flatMap((line, place) => (place === 0 ? line : [" ", ...line])));
}

/** What stands in a line. */
function lineOf(nodes: readonly PhrasingContent[], reading: Reading): ProseLine {
  return joined(nodes.flatMap((node) => partsOf(node, reading)));
}

/** Parts with neighbouring words put together. */
function joined(parts: ProseLine): ProseLine {
  const line: ProseLine[number][] = [];
  for (const part of parts) {
    const last = line.at(-1);
    if (typeof part === "string" && typeof last === "string") line[line.length - 1] = last + part;
    else line.push(part);
  }
  return line;
}

function partsOf(node: PhrasingContent, reading: Reading): ProseLine {
  switch (node.type) {
    case "text":
      return [node.value.replace(/\s*\n\s*/gu, " ")];
    case "inlineCode":
      return [node.value];
    case "break":
      return [" "];
    case "emphasis":
    case "strong":
      return [{ is: node.type, of: lineOf(node.children, reading) }];
    case "delete":
      return lineOf(node.children, reading);
    case "link":
      return linkOf(lineOf(node.children, reading), node.url);
    case "linkReference":
      return linkOf(lineOf(node.children, reading), reading.addresses.get(node.identifier) ?? "");
    case "footnoteReference":
      return noteOf(node, reading);
    case "corpusPiece":
      return pieceOf(node.written, reading.at(node), reading);
    case "image":
    case "imageReference":
      reading.leaveOut(say`a picture`, node);
      return [];
    case "html":
      if (!node.value.startsWith("<!--")) reading.leaveOut("HTML", node);
      return [];
  }
}

/** The words of a link with where it leads behind them, as it stands on paper. */
function linkOf(said: ProseLine, address: string): ProseLine {
  const [first] = said;
  const bare = said.length === 1 && (first === address || `mailto:${String(first)}` === address);
  return bare || address === "" || address.startsWith("#") ? said : [...said, ` (${address})`];
}

function noteOf(node: Extract<PhrasingContent, { type: "footnoteReference" }>, reading: Reading): ProseLine {
  const note = reading.notes.get(node.identifier);
  if (!note) return [];
  reading.noted.add(node.identifier);
  if (reading.inNote) {
    reading.leaveOut(say`a note in a note`, node);
    return [];
  }
  const blocks = blocksIn(note.children, { ...reading, inNote: true });
  const lines = blocks.flatMap((one) => (one.is === "list" ? one.items : [one.of]));
  return [{ is: "note", of: inOne(lines) }];
}

function pieceOf(written: string, at: Span, reading: Reading): ProseLine {
  const piece = pieceIn(written, at);
  if ("rule" in piece) {
    reading.findings.push(piece);
    return [];
  }
  reading.pieces.push(piece);
  return [piece];
}
