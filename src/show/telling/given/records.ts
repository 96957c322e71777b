import type { Id } from "../../../base/finding.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { inputReferences } from "../../../link/inputs.ts";
import { nameRecords } from "../../../link/names/name.ts";
import { checkReferences } from "../../../link/references/check.ts";
import type { Known } from "../../../link/references/points-to.ts";
import type { Source } from "../../../read/bibliography/read.ts";
import type { AnyRecord } from "../../../read/record.ts";
import type { PluginFile } from "../../../read/source-file.ts";
import { citableUnder, shownUnder, withheldIn } from "../../withhold.ts";
import { openFields } from "./open.ts";
import type { GivenFrom, GivenWith } from "./open.ts";
import { withoutLoss } from "./loss.ts";

/** What is given of a corpus: records without what they name that is not, and sources. */
export interface RecordsGiven {
  readonly records: ReadonlyMap<Id, AnyLinked>;
  readonly sources: ReadonlyMap<Id, Source>;
}

/**
 * Takes out what may not be shown and what cannot do without it, until nothing more is lost. `code` are
 * the plug-ins of the corpus that are given.
 */
export function recordsGiven(model: GivenFrom, given: GivenWith, code: readonly PluginFile[]): RecordsGiven {
  const { graph } = model;
  const citable = citableUnder(model);
  const sources = new Map(
    [...graph.sources].filter(([key, { members }]) => citable(key) && members.every(citable)),
  );
  const first = [...graph.records].flatMap(([id, record]) =>
    isOpen(model, record, given, code) ? [[id, openFields(graph, record, given)] as const] : [],
  );
  const kept = new Map(first);
  const lost = new Set([...graph.sources.keys(), ...graph.records.keys()]);
  for (const id of [...sources.keys(), ...kept.keys()]) lost.delete(id);
  const names = { records: graph.records, lost: new Set<Id>(), findings: [] };
  const known: Known = { names, sources, lost };
  for (let size = -1; size !== kept.size;) {
    size = kept.size;
    for (const [id, record] of first) {
      if (!kept.has(id)) continue;
      const whole = withoutLost(record, known);
      if (whole) kept.set(id, whole);
      else loseAll([id]);
    }
    loseAll(renamed(kept, sources));
  }
  return { records: kept, sources };

  function loseAll(ids: readonly Id[]): void {
    for (const id of ids) {
      kept.delete(id);
      lost.add(id);
    }
  }
}

/** Whether a record may be given by itself, whatever it names. */
function isOpen(
  model: GivenFrom,
  record: AnyLinked,
  { pictures }: GivenWith,
  code: readonly PluginFile[],
): boolean {
  const { id, list, values } = record;
  if (!shownUnder(model)(id) || (list === "passages" && !citableUnder(model)(id))) return false;
  if (list === "images") return pictures.has(id);
  if (list !== "derivations") return true;
  return !hasCode(model.graph, values.plugin) || code.some(({ name }) => name === values.plugin);
}

function hasCode(graph: Graph, plugin: string): boolean {
  return graph.pluginFiles.some(({ name }) => name === plugin);
}

/** Pictures that may be given out, where their files can be had: published, and all that they show may be shown. */
export function picturesOpen(model: GivenFrom): readonly Extract<AnyLinked, { readonly list: "images" }>[] {
  const withheld = withheldIn(model.graph);
  const shown = shownUnder(model);
  return model.graph
    .list("images")
    .filter(({ id, values }) => shown(id) && values.publish === true && !values.of.some(withheld));
}

function withoutLost(record: AnyLinked, known: Known): AnyLinked | null {
  const checked = checkReferences(record, known, []);
  if (!checked) return null;
  if (checked.list === "derivations" && !inputReferences(checked, known, [])) return null;
  return withoutLoss(record, checked);
}

/** Records without an id that would go by another name, since one of the same name is not given. */
function renamed(kept: ReadonlyMap<Id, AnyLinked>, sources: ReadonlyMap<Id, Source>): readonly Id[] {
  const records = [...kept.values()];
  const anew = records.map(({ list, values, file, node, id, named }) => {
    return { list, values, file, node, id: named ? id : null } as AnyRecord;
  });
  const ids = [...nameRecords(anew, sources, []).records.keys()];
  return records.flatMap(({ id }, place) => (ids[place] === id ? [] : [id]));
}
