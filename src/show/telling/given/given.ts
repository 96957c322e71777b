import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { listNames } from "../../../read/grammar/kinds.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { bibliographyGiven } from "./bibliography.ts";
import { filesOf } from "./files.ts";
import { recordsGiven } from "./records.ts";
import { settingsGiven } from "./settings.ts";
import type { GivenFrom, GivenWith } from "./open.ts";
import { pluginsGiven } from "./plugins.ts";

/** A corpus as it may be given out. */
export interface Given {
  /** Its files, which the program reads as any corpus, in the order of their paths; pictures are not among them. */
  readonly files: readonly SourceFile[];
  /** The records that are in it, without what of them is not. */
  readonly records: ReadonlyMap<Id, AnyLinked>;
  /** How many of each list, and of the sources, are not in it; lists of which none is left out are not named. */
  readonly leftOut: readonly (readonly [ListName | "sources", number])[];
}

/**
 * The corpus without what is withheld, written anew from what its records say: comments and fields of the
 * compilers' own are not in it, nor prose, drafts, styles, tables and who typed what; notes only where they are to go with it. Where a record would say another thing without what it names, it is not given either.
 */
export function givenCorpus(model: GivenFrom, given: GivenWith): Given {
  const { graph } = model;
  const code = pluginsGiven(graph);
  const { records, sources } = recordsGiven(model, given, code);
  const named = (id: Id): boolean => records.has(id) || sources.has(id);
  const bibliography = bibliographyGiven(sources);
  const settings = settingsGiven(graph.settings, named, bibliography === null ? [] : [bibliography.path]);
  const files = [
    settings,
    ...(bibliography === null ? [] : [bibliography]),
    ...listNames.flatMap((list) => filesOf(graph, list, records)),
    ...code.map(({ file, text }) => ({ path: file, text })),
  ];
  const lists = listNames.map((list) => {
    const all = graph.list(list);
    return [list, all.filter(({ id }) => !records.has(id)).length] as const;
  });
  return {
    files: files.toSorted((a, b) => byText(a.path, b.path)),
    records,
    leftOut: [...lists, ["sources", graph.sources.size - sources.size] as const].filter(([, n]) => n > 0),
  };
}
