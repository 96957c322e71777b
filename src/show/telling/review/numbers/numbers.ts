import { say } from "../../../../base/text/said/said.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import type { DerivationRecord } from "../../../../link/graph.ts";
import type { Plugin } from "../../../../plugin.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { heading, paragraph, sentences } from "../pieces/inlines.ts";
import { resultBlocks } from "./result.ts";

/** The computed numbers by their methods: what each method asks and where it misleads, then each result with its figure. */
export function numbersSection(sight: Sight): readonly Block[] {
  const { graph, model, plugins, shown } = sight;
  const records = graph
    .list("derivations")
    .filter(({ id }) => shown(id) && hasData(model.derivations.byId.get(id), model.lens.asOf));
  const used = [...new Set(records.map(({ values }) => values.plugin))];
  return used.flatMap((name) => {
    const plugin = plugins.find((one) => one.id === name);
    const own = records.filter(({ values }) => values.plugin === name);
    return [
      ...methodBlocks(name, plugin, own),
      ...own.flatMap((record) => resultBlocks(sight, record, plugin)),
    ];
  });
}

/** Whether there is anything to compute on: in an earlier year there may be nothing in print yet. */
function hasData(derived: Derived | undefined, asOf: number | undefined): boolean {
  return derived !== undefined && (asOf === undefined || derived.used.length > 0);
}

/** A method: its name, what it asks and after whom, and the conditions under which it misleads whatever the data. */
function methodBlocks(
  name: string,
  plugin: Plugin | undefined,
  own: readonly DerivationRecord[],
): readonly Block[] {
  if (plugin === undefined) return [heading(2, [name])];
  const { title, doc, sources, cautions } = plugin;
  const after: Inlines =
    sources.length === 0 ? [] : [{ is: "note", of: [say`Sources of the method: `, ...inRow(sources), "."] }];
  const general = cautions.filter((one) => one.whenMet !== true).map((one): Inlines => [one.text]);
  return [
    heading(2, [title]),
    ...paragraph([[doc, ...after]]),
    ...(general.length > 0 && own.length > 0 ? [{ is: "caution" as const, of: sentences(general) }] : []),
  ];
}

function inRow(sources: readonly string[]): Inlines {
  return sources.flatMap((one, place): Inlines => (place === 0 ? [one] : ["; ", one]));
}
