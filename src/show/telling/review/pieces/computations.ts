import { titleOf } from "../../../numbers/value.ts";
import type { Block, Computed, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";

/** The computations whose numbers are printed or drawn in some blocks, in the order of their first mention. */
export function computationsIn(sight: Sight, blocks: readonly Block[]): readonly Computed[] {
  const { graph, model, plugins } = sight;
  const byRun = new Map(
    [...model.derivations.byId.values()]
      .toReversed()
      .flatMap((one) => (one.run === null ? [] : [[one.run.key, one] as const])),
  );
  const runOf = (derivation: string): string | null =>
    model.derivations.byId.get(derivation)?.run?.key ?? null;
  const met = new Set(blocks.flatMap((block) => runsIn(block, runOf)));
  return [...met].flatMap((run): readonly Computed[] => {
    const derived = byRun.get(run);
    const record = derived && graph.records.get(derived.id);
    if (record?.list !== "derivations") return [];
    const plugin = plugins.find((one) => one.id === record.values.plugin);
    const method = plugin === undefined ? record.values.plugin : `${plugin.id} ${plugin.version}`;
    return [{ run, derivation: record.id, title: record.values.short ?? titleOf(graph, record), method }];
  });
}

/** The keys of the computations that a block prints or draws; `runOf` gives that of a derivation. */
function runsIn(block: Block, runOf: (derivation: string) => string | null): readonly string[] {
  const inline = (all: Inlines): readonly string[] =>
    all.flatMap((one) => (typeof one === "string" ? [] : within(one)));
  const within = (one: Exclude<Inlines[number], string>): readonly string[] => {
    if ("say" in one) return [];
    if (one.is === "printed") return [one.run];
    return "of" in one ? inline(one.of) : [];
  };
  switch (block.is) {
    case "heading":
    case "paragraph":
    case "quotation":
    case "caution":
      return inline(block.of);
    case "list":
      return block.items.flatMap(inline);
    case "terms":
      return block.rows.flatMap(([name, value]) => [...inline(name), ...inline(value)]);
    case "table":
      return [block.caption, ...block.head, ...block.rows.flat()].flatMap(inline);
    case "plate": {
      const run = block.picture.is === "computed" ? runOf(block.picture.derivation) : null;
      return [...(run === null ? [] : [run]), ...inline(block.caption)];
    }
    default:
      return [];
  }
}
