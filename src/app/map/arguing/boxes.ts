import type { Id } from "../../../base/finding.ts";
import type { BoxState, MapPage, PlacedBox, Scene } from "../../../show/map/scene.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import type { Turned } from "../../../show/map/arguing/told.ts";
import type { About } from "./ways.ts";

/** The record that a box shows, as far as arguing asks; null for a box that shows none an argument could name. */
export function aboutBox(box: PlacedBox | undefined): About | null {
  const [id] = box?.records ?? [];
  if (!box || id === undefined) return null;
  switch (box.look.as) {
    case "answer":
    case "claim":
      return { id, list: "claims", answer: box.look.as === "answer" };
    case "beam":
      // The step that a number makes goes by the number's name and the claim's, and is attacked in the number.
      return { id, list: box.id === id ? "arguments" : "derivations", answer: false };
    case "pile":
      return { id, list: "measurements", answer: false };
    case "number":
      return { id, list: "derivations", answer: false };
    default:
      return null;
  }
}

/** Where an argument in hand is marked on the map: on its premises, and before what it leads to or is against. */
export interface Marks {
  readonly premises: readonly Id[];
  readonly conclusion: Id | null;
  readonly attacked: readonly Id[];
}

/** The boxes on which an argument in hand is marked, by their ids. */
export function marksOf({ boxes }: Scene, { because, aim }: ArgumentDraft): Marks {
  const boxOf = (record: Id): readonly Id[] => {
    const found = boxes.find((box) => aboutBox(box) !== null && box.records.includes(record));
    return found ? [found.id] : [];
  };
  return {
    premises: because.flatMap(boxOf),
    conclusion: aim.to === "claim" ? (boxOf(aim.id)[0] ?? null) : null,
    attacked: aim.to === "against" ? aim.ids.flatMap(boxOf) : [],
  };
}

/** The map with the standings that things would have with the argument in hand; nothing on it moves. */
export function withTurned<P extends MapPage>(page: P, turned: readonly Turned[] | null): P {
  if (turned === null || turned.length === 0) return page;
  const by = new Map(turned.map((one) => [one.id, one]));
  const states = Object.fromEntries(
    page.scene.boxes.flatMap((box): readonly (readonly [Id, BoxState])[] => {
      const state = page.states[box.id];
      if (!state) return [];
      const own = by.get(box.id) ?? (box.records.length === 1 ? by.get(box.records[0] ?? "") : undefined);
      const is = own !== undefined && own.was === state.standing ? own : undefined;
      return [[box.id, is ? { ...state, standing: is.is, was: is.was } : state]];
    }),
  );
  return { ...page, states };
}
