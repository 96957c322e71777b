import type { Plugin } from "../../../plugin.ts";
import type { Prose, ProseBlock, ProseLine } from "../../../read/prose/prose.ts";
import type { Reported } from "../../report/report.ts";
import { listedUnder, shownUnder, withheldIn } from "../../withhold.ts";
import type { Block, Inline, Inlines } from "../blocks/block.ts";
import { commonWords } from "../review/pieces/embedded.ts";
import { pieceInlines } from "./pieces.ts";
import type { Weaving } from "./pieces.ts";

/** The scholar's own prose with what the corpus says put in its places, by the names of its files without their endings. */
export function proseOf(model: Reported, plugins: readonly Plugin[]): ReadonlyMap<string, readonly Block[]> {
  const { graph } = model;
  const counts = shownUnder(model);
  const weaving: Weaving = {
    model,
    plugins,
    withheld: withheldIn(graph),
    listed: listedUnder(model),
    counts,
    common: commonWords(graph, counts),
  };
  return new Map(graph.prose.map((one) => [one.name, woven(one, weaving)]));
}

function woven({ blocks }: Prose, weaving: Weaving): readonly Block[] {
  return blocks.map((block) => blockOf(block, weaving));
}

function blockOf(block: ProseBlock, weaving: Weaving): Block {
  if (block.is === "list") return { ...block, items: block.items.map((one) => lineOf(one, weaving)) };
  return { ...block, of: lineOf(block.of, weaving) };
}

/** A line with its pieces put in; what stands before and behind a piece tells how it is written. */
function lineOf(line: ProseLine, weaving: Weaving): Inlines {
  return line.flatMap((part, place): readonly Inline[] => {
    if (typeof part === "string") return [part];
    if (part.is === "emphasis" || part.is === "strong" || part.is === "note")
      return [{ is: part.is, of: lineOf(part.of, weaving) }];
    const before = line[place - 1];
    const after = line[place + 1];
    return pieceInlines(part, weaving, {
      before: typeof before === "string" ? before : before === undefined ? "" : "…",
      after: typeof after === "string" ? after : after === undefined ? "" : "…",
    });
  });
}
