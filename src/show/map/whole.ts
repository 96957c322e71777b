import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";
import type { MapPage } from "./scene.ts";

/** A record's own words, whole, and their language where the record says it. */
export interface Whole {
  readonly text: string;
  readonly lang: string | null;
}

/** What the map says of a box when it is looked at closely: its words by box, and what the focus is called. */
export interface WholeWords {
  readonly whole: Readonly<Record<Id, Whole>>;
  readonly focus: string | null;
}

/** The whole words of every box of a map that shows a record. */
export function wholeWords(
  graph: Graph,
  { scene, view }: Pick<MapPage, "scene" | "view">,
  told: (text: Text) => string = inEnglish,
): WholeWords {
  const withheld = withheldIn(graph);
  const entries = scene.boxes.flatMap((box): readonly (readonly [Id, Whole])[] => {
    const [record] = box.records;
    return record === undefined || withheld(record) ? [] : [[box.id, wordsOf(graph, record, told)]];
  });
  const { focus } = view;
  const known = focus !== null && (graph.records.has(focus) || graph.sources.has(focus)) && !withheld(focus);
  return { whole: Object.fromEntries(entries), focus: known ? told(labelText(graph, focus)) : null };
}

function wordsOf(graph: Graph, id: Id, told: (text: Text) => string): Whole {
  const record = graph.records.get(id);
  switch (record?.list) {
    case "claims":
    case "observations":
      return { text: record.values.text, lang: null };
    case "arguments":
    case "derivations":
      return { text: record.values.text ?? told(labelText(graph, id)), lang: null };
    case "passages":
      return record.values.quote === undefined
        ? { text: told(labelText(graph, id)), lang: null }
        : { text: record.values.quote, lang: record.values.lang ?? null };
    default:
      return { text: told(labelText(graph, id)), lang: null };
  }
}
