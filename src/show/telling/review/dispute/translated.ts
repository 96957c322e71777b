import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Linked } from "../../../../link/graph.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { aside, citesOf } from "../pieces/cites.ts";
import { words } from "../pieces/inlines.ts";

/** The first passage that a record is taken from and that may be shown. */
export function passageOf({ graph, withheld }: Sight, id: Id): Linked<"passages"> | null {
  const record = graph.records.get(id);
  const from = record && "from" in record.values ? (record.values.from ?? []) : [];
  for (const { key } of from) {
    const passage = graph.records.get(key);
    const sources = graph.provenance(key).sources;
    if (passage?.list === "passages" && ![key, ...sources].some(withheld)) return passage;
  }
  return null;
}

/** The language of a passage: its own, else that of its source. */
function languageOf({ graph }: Sight, { id, values }: Linked<"passages">): string | null {
  const [source] = graph.provenance(id).sources;
  return values.lang ?? (source === undefined ? null : (graph.sources.get(source)?.csl.language ?? null));
}

/** What a passage means in the corpus's language, as a note to words that are quoted from it. */
export function translationNote(sight: Sight, id: Id): Inlines {
  const translation = passageOf(sight, id)?.values.translation;
  if (translation === undefined) return [];
  return [{ is: "note", of: [say`The passage in translation: `, words(translation, sight.language, true)] }];
}

/** A passage as a block of its own, with where it stands and what it means; nothing where its words are not recorded. */
export function quotationOf(sight: Sight, id: Id): readonly Block[] {
  const passage = passageOf(sight, id);
  if (passage?.values.quote === undefined) return [];
  const { quote, translation } = passage.values;
  const cites = citesOf(sight, [{ key: passage.id, locator: null }]);
  const of: Inlines = [
    words(quote, languageOf(sight, passage)),
    ...aside(cites),
    ...(translation === undefined ? [] : [" ", say`In translation: `, words(translation, sight.language)]),
  ];
  return [{ is: "quotation", of }];
}
