import type { Id } from "../../../../../base/finding.ts";
import { coded, say } from "../../../../../base/text/said/said.ts";
import type { Text } from "../../../../../base/text/said/said.ts";
import { newId } from "../../../../../link/edit/new-id.ts";
import type { WrittenMap } from "../../../../../read/edit/written.ts";
import { artefactCalled } from "../../../grid/columns/artefact.ts";
import { numberKey } from "../../../grid/columns/number.ts";
import type { Asked } from "../asked.ts";
import { hiddenIn, keysOf, twinOf } from "./likened.ts";
import type { Numbers, Twin } from "./likened.ts";
import { cellAt, fieldsAt } from "../rows.ts";
import type { RowDraft } from "../rows.ts";

/** An artefact of a table, and the artefact of the corpus that it is taken for. */
export interface ThingDraft extends RowDraft {
  readonly column: null;
  readonly twin: Twin | null;
  /** It is like something that nothing may be told of, and is left alone. */
  readonly hidden: boolean;
}

interface Thing {
  readonly row: number;
  readonly values: WrittenMap;
  readonly numbers: Numbers;
  readonly troubles: readonly Text[];
  readonly twin: Twin | null;
  readonly hidden: boolean;
}

/** The artefacts of a table, each with the one of the corpus that has its id, one of its numbers, or else its name. */
export function thingsIn(asked: Asked): readonly ThingDraft[] {
  const { graph } = asked;
  const hidden = hiddenIn(graph);
  const things = asked.coming.rows.map((_, row): Thing => {
    const { values, numbers, troubles } = thingAt(asked, row);
    const isHidden = hidden(values, numbers);
    return {
      row,
      values,
      numbers,
      troubles,
      hidden: isHidden,
      twin: isHidden ? null : twinOf(graph, values, numbers),
    };
  });
  const named = namedIn(asked, things);
  const met = new Map<string, number>();
  return things.map((thing): ThingDraft => {
    const { row, values, numbers, troubles, twin } = thing;
    const same = sameBefore(met, thing);
    const line = same === null ? 0 : asked.coming.lineAt(asked.coming.rows[same]?.span.start ?? 0);
    const twice = say`Duplicate artefact, expected it once: line ${String(line)} is the same`;
    const id = named.idOf(row);
    const whole = named.wholeOf(row);
    const own = say`Unexpected whole ${coded(whole ?? "")}, expected another thing than the part itself`;
    return {
      row,
      column: null,
      values: {
        id,
        ...values,
        ...(whole === null ? {} : { "part-of": whole }),
        ...(Object.keys(numbers).length > 0 ? { numbers } : {}),
      },
      troubles: [...troubles, ...(same === null ? [] : [twice]), ...(whole === id ? [own] : [])],
      twin,
      hidden: thing.hidden,
    };
  });
}

function thingAt(
  asked: Asked,
  row: number,
): { readonly values: WrittenMap; readonly numbers: Numbers; readonly troubles: readonly Text[] } {
  const numbers: Record<string, string> = {};
  asked.columns.forEach(({ meaning }, column) => {
    const text = cellAt(asked, row, column);
    if (meaning.is === "number" && text !== "") numbers[meaning.register] = text;
  });
  return { ...fieldsAt(asked, row, () => false), numbers };
}

/** The row before that has the id of a thing, or one of its numbers. */
function sameBefore(met: Map<string, number>, { row, values, numbers }: Thing): number | null {
  let same: number | null = null;
  for (const key of keysOf(values, numbers, false)) {
    const before = met.get(key);
    if (before === undefined) met.set(key, row);
    else same ??= before;
  }
  return same;
}

interface Naming {
  /** The id that a row has in the corpus: that of the artefact it is taken for, its own, or a new one. */
  readonly idOf: (row: number) => Id;
  /** The whole that a row names, as the corpus has it or another row. */
  readonly wholeOf: (row: number) => Id | null;
}

/** Names the things of a table; a part is called after its whole, which may be a row before or behind it. */
function namedIn({ graph, choices }: Asked, things: readonly Thing[]): Naming {
  const called = new Map<string, number | null>();
  for (const { row, values, numbers } of things)
    for (const text of [values["id"], values["name"], ...Object.values(numbers)]) {
      if (typeof text !== "string") continue;
      const key = numberKey(text);
      const before = called.get(key);
      called.set(key, before === undefined || before === row ? row : null);
    }
  const taken = new Set<Id>();
  for (const { values } of things) if (typeof values["id"] === "string") taken.add(values["id"]);
  const ids = new Map<number, Id>();
  const open = new Set<number>();
  const idOf = (row: number): Id => {
    const known = ids.get(row);
    const thing = things[row];
    if (known !== undefined || !thing) return known ?? "";
    const { id: own, ...others } = thing.values;
    // One that is to be another artefact than the one it is like has an id of its own.
    const twin = choices.get(row)?.do === "add" ? null : (thing.twin?.id ?? null);
    const id = typeof own === "string" && own !== thing.twin?.id ? own : (twin ?? made(row, others));
    ids.set(row, id);
    taken.add(id);
    return id;
  };
  const made = (row: number, values: WrittenMap): Id => {
    const whole = wholeOf(row);
    const [number] = Object.values(things[row]?.numbers ?? {});
    const named = values["name"] === undefined && number !== undefined ? { ...values, name: number } : values;
    return newId(graph, "artefacts", whole === null ? named : { ...named, "part-of": whole }, taken);
  };
  const wholeOf = (row: number): Id | null => {
    const said = things[row]?.values["part-of"];
    if (typeof said !== "string") return null;
    if (graph.records.has(said)) return said;
    const found = artefactCalled(graph, said);
    const other = called.get(numberKey(said));
    const isAnother = typeof other === "number" && choices.get(other)?.do === "add";
    if (found.is === "found" && !isAnother) return found.id;
    // Things that are part of one another have no whole: the reader tells such a circle.
    if (other === undefined || other === null || open.has(row)) return said;
    open.add(row);
    const id = idOf(other);
    open.delete(row);
    return id;
  };
  return { idOf, wholeOf };
}
