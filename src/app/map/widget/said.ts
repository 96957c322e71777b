import type { Id } from "../../../base/finding.ts";
import type { BoxState, PlacedBox, Scene } from "../../../show/map/scene.ts";
import { mapWords } from "../../words/shown/map.ts";
import { tiesOf } from "../stage/graph.ts";

/** How many boxes lie directly under a box, directly above it, and attack it. */
export interface Around {
  readonly below: number;
  readonly above: number;
  readonly attacks: number;
}

/** What lies round every box of a scene, in number. */
export function aroundAll(scene: Scene): ReadonlyMap<Id, Around> {
  const none: Around = { below: 0, above: 0, attacks: 0 };
  const found = new Map<Id, Around>();
  const count = (id: Id, what: keyof Around): void => {
    const before = found.get(id) ?? none;
    found.set(id, { ...before, [what]: before[what] + 1 });
  };
  for (const { source, target, way } of tiesOf(scene)) {
    if (way === "support") {
      count(source, "above");
      count(target, "below");
    } else count(target, "attacks");
  }
  return found;
}

/** A box in words, for those who hear the map. */
export function describe(box: PlacedBox, state: BoxState | null, around: Around | undefined): string {
  const { look } = box;
  return mapWords.said({
    kind: mapWords.kinds[look.as],
    text: fullest(box),
    standing: state?.standing ?? null,
    later: state?.later ?? false,
    folded: look.as === "fold" ? null : box.folded,
    below: around?.below ?? 0,
    above: around?.above ?? 0,
    attacks: around?.attacks ?? 0,
  });
}

/** The longest words that a box has for itself. */
export function fullest(box: PlacedBox): string {
  const { look } = box;
  switch (look.as) {
    case "claim":
    case "answer":
      return look.text.lines.join(" ");
    case "fold":
    case "beam":
    case "mark":
      return look.words.lines.join(" ") || box.title;
    case "number":
      return `${look.value}, ${look.under}`;
    case "pile":
      return look.labels.map((label) => `${label.value}, ${label.under}`).join("; ");
    case "thing":
      return look.name.lines.join(" ");
  }
}
