import type { Id } from "../../../../base/finding.ts";
import { byText } from "../../../../base/order.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import { tokensOf } from "../../../search/fold.ts";
import { withheldIn } from "../../../withhold.ts";

/** A record that says nearly the same as what is being typed. */
export interface Alike {
  readonly id: Id;
  readonly text: string;
}

/** The texts of a list, by the stretches of three letters in them. */
interface Shelf {
  readonly texts: readonly { readonly id: Id; readonly text: string; readonly weight: number }[];
  readonly places: ReadonlyMap<string, readonly number[]>;
}

/** The field whose text is compared, in the lists where the same thing is easily entered twice. */
export const comparedField: Readonly<Partial<Record<ListName, string>>> = {
  claims: "text",
  questions: "text",
  observations: "text",
  artefacts: "name",
  scholars: "name",
};

/** Texts that have this share of their weight in common are told (Dice's coefficient; the limits are our own). */
const enough = 0.6;
/** So is one that is nearly all in the other: one of them goes on, or is not typed to its end. */
const within = 0.85;
const most = 5;

/** Records of a list whose text is nearly the one given, the likest first; `except` is the record that is changed. */
export function alikeIn(graph: Graph, list: ListName, text: string, except: Id | null): readonly Alike[] {
  const wanted = stretchesOf(text);
  if (comparedField[list] === undefined || wanted.size < 4) return [];
  const shelf = shelfOf(graph, list);
  const common = new Map<number, number>();
  for (const stretch of wanted) {
    const weight = weightOf(shelf, stretch);
    for (const place of shelf.places.get(stretch) ?? []) common.set(place, (common.get(place) ?? 0) + weight);
  }
  const whole = sizeOf(shelf, wanted);
  const best = new Map<Id, Alike & { readonly share: number }>();
  for (const [place, weight] of common) {
    const one = shelf.texts[place];
    if (!one || one.id === except) continue;
    const share = (2 * weight) / (one.weight + whole);
    const inside = wanted.size >= 12 && weight / Math.min(one.weight, whole) >= within;
    if (share < enough && !inside) continue;
    if (share > (best.get(one.id)?.share ?? 0)) best.set(one.id, { id: one.id, text: one.text, share });
  }
  return [...best.values()]
    .sort((a, b) => b.share - a.share || byText(a.id, b.id))
    .slice(0, most)
    .map(({ id, text: said }) => ({ id, text: said }));
}

/** What a stretch tells: much where few texts have it, little where most do (as in inverse document frequency). */
function weightOf({ texts, places }: Shelf, stretch: string): number {
  return Math.log(1 + texts.length / (places.get(stretch)?.length ?? 1));
}

function sizeOf(shelf: Shelf, stretches: ReadonlySet<string>): number {
  let sum = 0;
  for (const one of stretches) sum += weightOf(shelf, one);
  return sum;
}

const known = new WeakMap<Graph, Map<ListName, Shelf>>();

function shelfOf(graph: Graph, list: ListName): Shelf {
  const shelves = known.get(graph) ?? new Map<ListName, Shelf>();
  known.set(graph, shelves);
  const before = shelves.get(list);
  if (before) return before;
  const withheld = withheldIn(graph);
  const all = graph
    .list(list)
    .filter(({ id }) => !withheld(id))
    .flatMap(({ id, values }) => textsOf(values).map((text) => ({ id, text, stretches: stretchesOf(text) })));
  const places = new Map<string, number[]>();
  all.forEach(({ stretches }, place) => {
    for (const one of stretches) {
      const those = places.get(one);
      if (those) those.push(place);
      else places.set(one, [place]);
    }
  });
  const bare: Shelf = { texts: all.map(({ id, text }) => ({ id, text, weight: 0 })), places };
  const texts = all.map(({ id, text, stretches }) => ({ id, text, weight: sizeOf(bare, stretches) }));
  const shelf = { texts, places };
  shelves.set(list, shelf);
  return shelf;
}

function textsOf(values: object): readonly string[] {
  const {
    text,
    name,
    "known-as": also = [],
  } = values as Readonly<{
    text?: string;
    name?: string;
    "known-as"?: readonly string[];
  }>;
  return [text ?? name ?? [], also].flat();
}

/** The stretches of three letters of a text's words, their ends among them; letters are compared without case and marks. */
function stretchesOf(text: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { folded } of tokensOf(text.slice(0, 2000))) {
    const padded = ` ${folded} `;
    for (let at = 0; at + 3 <= padded.length; at++) found.add(padded.slice(at, at + 3));
  }
  return found;
}
