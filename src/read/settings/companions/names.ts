import type { Id } from "../../../base/finding.ts";
import type { Citation, Field, Fields, Target } from "../../grammar/field.ts";
import type { Entry, MapNode, Node } from "../../yaml/tree.ts";

/** What the ids of another corpus are here. */
export interface Naming {
  /** The name of a record of it. */
  readonly own: (id: Id) => Id;
  /** The name of what a reference leads to; null where that is not taken. */
  readonly of: (id: Id, to: readonly Target[]) => Id | null;
}

const cited: readonly Target[] = ["sources"];

/** A record's values with every id as it is called here; references to what is not taken are left out. */
export function valuesNamed(values: object, fields: Fields, naming: Naming): Record<string, unknown> {
  const named = Object.create(null) as Record<string, unknown>;
  for (const [name, value] of Object.entries(values)) {
    const field = fields[name];
    const here: unknown = field ? valueNamed(value, field, naming) : value;
    if (here !== null) named[name] = here;
  }
  return named;
}

function valueNamed(value: unknown, field: Field, naming: Naming): unknown {
  const some = <T>(list: readonly T[], name: (one: T) => T | null): readonly T[] | null => {
    const kept = list.map(name).filter((one) => one !== null);
    return kept.length === 0 ? null : kept;
  };
  const citation = ({ key, locator }: Citation): Citation | null => {
    const here = naming.of(key, cited);
    return here === null ? null : { key: here, locator };
  };
  switch (field.type) {
    case "id":
      return naming.own(value as Id);
    case "ref":
      return naming.of(value as Id, field.to);
    case "refs":
      return some(value as readonly Id[], (id) => naming.of(id, field.to));
    case "citation":
      return citation(value as Citation);
    case "citations":
      return some(value as readonly Citation[], citation);
    case "group":
      return valuesNamed(value as object, field.fields, naming);
    case "items":
      return (value as readonly object[]).map((one) => valuesNamed(one, field.fields, naming));
    default:
      return value;
  }
}

/** A record as written, every place as it is, with the ids as they are called here. */
export function nodeNamed(node: MapNode, fields: Fields, naming: Naming): MapNode {
  const entries = node.entries.flatMap((entry): readonly Entry[] => {
    const field = Object.hasOwn(fields, entry.key) ? fields[entry.key] : undefined;
    const value = field ? textNamed(entry.value, field, naming) : entry.value;
    return value === null ? [] : [{ ...entry, value }];
  });
  return { ...node, entries };
}

function textNamed(node: Node, field: Field, naming: Naming): Node | null {
  const each = (name: (text: string) => string | null): Node | null => {
    if (node.is === "map") return node;
    if (node.is === "text") {
      const text = node.text === "" ? node.text : name(node.text);
      return text === null ? null : { ...node, text };
    }
    const items = node.items.flatMap((one): readonly Node[] => {
      const text = one.is === "text" ? name(one.text) : null;
      if (one.is !== "text") return [one];
      return text === null ? [] : [{ ...one, text }];
    });
    return items.length === 0 ? null : { ...node, items };
  };
  switch (field.type) {
    case "id":
      return each(naming.own);
    case "ref":
    case "refs":
      return each((id) => naming.of(id, field.to));
    case "citation":
    case "citations":
      return each((text) => {
        const key = text.split(/\s/u)[0] ?? "";
        const here = naming.of(key, cited);
        return here === null ? null : `${here}${text.slice(key.length)}`;
      });
    case "group":
    case "items":
      if (node.is === "list")
        return {
          ...node,
          items: node.items.map((one) => (one.is === "map" ? nodeNamed(one, field.fields, naming) : one)),
        };
      return node.is === "map" ? nodeNamed(node, field.fields, naming) : node;
    default:
      return node;
  }
}
