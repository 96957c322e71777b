import type { Id } from "../../../base/finding.ts";
import type { Block, Inlines, Manuscript } from "../../../show/telling/blocks/block.ts";
import type { References } from "../../references/references.ts";
import { citedIn } from "./cited.ts";
import { setInlines } from "./inlines.ts";
import type { Setting } from "./inlines.ts";
import type { SetBlock, SetComputation, SetHeading, SetInlines, SetText } from "./set-text.ts";

/**
 * Sets a text in a style: `references` are of the sources it cites (`citedIn`), `langOf` tells the language of a source.
 * Throws `StyleFails` where the style cannot do it.
 */
export function setText(
  manuscript: Manuscript,
  references: References,
  langOf: (source: Id) => string | null = () => null,
): SetText {
  const { title, authors, language, blocks } = manuscript;
  const anchors = anchorsOf(blocks);
  const computations = computationsOf(manuscript);
  const declares = blocks.some((one) => one.is === "computations");
  const byKey = new Map(computations.map((one) => [one.key, one.anchor]));
  const at: Setting = {
    references,
    ours: /^en\b/i.test(language) ? {} : { lang: "en" },
    anchors: new Set(anchors.values()),
    computation: (run) => (declares ? (byKey.get(run) ?? null) : null),
    notes: [],
    firstNote: new Map(),
  };
  const cited = citedIn(manuscript);
  const material: Material = { references, langOf, anchors, computations, cited };
  const counts = { table: 0, plate: 0 };
  const set = blocks.map((block) => setBlock(block, (of) => setInlines(of, at), material, counts));
  const headings = set.filter((one): one is SetHeading => one.is === "heading").map(withoutNotes);
  return {
    title,
    authors,
    language,
    blocks: set.map((one) => (one.is === "contents" ? { ...one, entries: listed(headings) } : one)),
    notes: at.notes,
  };
}

/** What blocks are set from besides their own words. */
interface Material {
  readonly references: References;
  readonly langOf: (source: Id) => string | null;
  readonly anchors: ReadonlyMap<Block, string>;
  readonly computations: readonly SetComputation[];
  readonly cited: ReadonlySet<Id>;
}

function setBlock(
  block: Block,
  words: (of: Inlines) => SetInlines,
  { references, langOf, anchors, computations, cited }: Material,
  counts: { table: number; plate: number },
): SetBlock {
  switch (block.is) {
    case "heading":
      return { ...block, of: words(block.of), anchor: anchors.get(block) ?? "" };
    case "paragraph":
    case "quotation":
    case "caution":
      return { is: block.is, of: words(block.of) };
    case "list":
      return { ...block, items: block.items.map(words) };
    case "table": {
      const number = ++counts.table;
      const { is, figures } = block;
      const rows = {
        caption: words(block.caption),
        head: block.head.map(words),
        rows: block.rows.map((row) => row.map(words)),
      };
      return { is, number, anchor: `table-${number}`, ...rows, figures };
    }
    case "plate": {
      const number = ++counts.plate;
      return { ...block, number, anchor: `figure-${number}`, caption: words(block.caption) };
    }
    case "terms":
      return { is: "terms", rows: block.rows.map(([name, value]) => [words(name), words(value)] as const) };
    case "references":
      return {
        is: "references",
        entries: references
          .bibliography()
          .flatMap(({ id, runs }) => (cited.has(id) ? [{ id, runs, lang: langOf(id) }] : [])),
      };
    case "computations":
      return { is: "computations", entries: computations };
    case "contents":
      return { is: "contents", entries: [] };
    case "room":
      return block;
  }
}

/** As many headings stand on a page under the title; where there are more, those of the lowest level stay away. */
const mostListed = 36;

function listed(headings: readonly SetHeading[]): readonly SetHeading[] {
  const lowest = Math.max(...headings.map(({ level }) => level));
  if (headings.length <= mostListed || lowest === 1) return headings;
  return listed(headings.filter(({ level }) => level < lowest));
}

/** In a table of contents nothing calls a note. */
function withoutNotes(heading: SetHeading): SetHeading {
  return { ...heading, of: heading.of.filter((one) => one.is !== "note") };
}

/** An anchor for every heading, its own where it has one that no heading before it has. */
function anchorsOf(blocks: readonly Block[]): ReadonlyMap<Block, string> {
  const anchors = new Map<Block, string>();
  const taken = new Set<string>(blocks.flatMap((one) => (one.is === "heading" ? (one.anchor ?? []) : [])));
  const given = new Set<string>();
  let number = 0;
  for (const block of blocks) {
    if (block.is !== "heading") continue;
    let { anchor } = block;
    if (anchor === undefined || given.has(anchor)) {
      do anchor = `section-${++number}`;
      while (taken.has(anchor));
    }
    given.add(anchor);
    anchors.set(block, anchor);
  }
  return anchors;
}

/** The computations with anchors made of the beginning of their keys: as much of it as tells them apart. */
function computationsOf({ computations }: Manuscript): readonly SetComputation[] {
  const taken = new Set<string>();
  return computations.map(({ run, title, method }) => {
    let signs = 12;
    while (taken.has(run.slice(0, signs)) && signs < run.length) signs += 4;
    taken.add(run.slice(0, signs));
    return { anchor: `run-${run.slice(0, signs)}`, title, method, key: run };
  });
}
