import type { Id } from "../../base/finding.ts";
import { count, row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Standing } from "../../judge/judge.ts";
import { familyText, labelText } from "../../link/names/label.ts";
import { holdersOf } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import type { BoxState } from "./scene.ts";
import { bearingWords } from "./section/boxes/beam.ts";
import { foldWords } from "./section/boxes/fold-words.ts";
import { numberValue } from "./section/boxes/number.ts";
import { litBy, litThings } from "./section/open/focus.ts";
import { folds } from "./section/open/sketch.ts";
import type { Sketch } from "./section/open/sketch.ts";
import type { Drawn } from "./section/section.ts";
import { printIn } from "./section/net/print.ts";

/** How every box of a section stands under a lens, and how it stood at the step in time before, if there is one. */
export function statesOf(
  { field, sketches, section, focus }: Drawn,
  model: Reported,
  before: Reported | null,
  inFocus: Id | null,
): Readonly<Record<Id, BoxState>> {
  const { net } = field;
  const now = stateUnder(field.net, model);
  const then = before ? stateUnder(field.net, before) : null;
  const lit = inFocus === null ? null : litBy(net, focus);
  const things = lit === null || inFocus === null ? null : new Set([...litThings(net, lit), inFocus]);
  const drawn = new Set(section.boxes.flatMap((box) => box.records));
  const isLit = (sketch: Sketch): boolean => {
    if (lit === null || things === null) return true;
    if (sketch.as === "thing" || sketch.id === folds.things)
      return sketch.records.some((id) => things.has(id));
    const ids =
      sketch.as === "fold" ? [...sketch.records, ...sketch.hidden.under] : [sketch.id, ...sketch.records];
    return ids.some((id) => lit.has(id));
  };
  return Object.fromEntries(
    sketches.map((sketch): [Id, BoxState] => {
      const [is, was] = [now(sketch), then?.(sketch) ?? null];
      const changed = was === null || is.later ? null : was.later ? "not there" : was.standing;
      const said = is.later
        ? null
        : sketch.as === "fold"
          ? foldWords(field, sketch, drawn, (id) => model.judgement.standings.get(id) ?? null)
          : saidOf(model, sketch);
      const words = said === null ? "" : net.told(said);
      return [
        sketch.id,
        { ...is, said: words, was: changed === is.standing ? null : changed, lit: isLit(sketch) },
      ];
    }),
  );
}

/** Standing of each box, and whether any of it is in print yet. */
function stateUnder(
  net: Drawn["field"]["net"],
  model: Reported,
): (sketch: Sketch) => { readonly standing: Standing | null; readonly later: boolean } {
  const { standings } = model.judgement;
  const print = printIn(net, model);
  return (sketch) => {
    switch (sketch.as) {
      case "thing":
        return { standing: null, later: !print.thing(sketch.id) };
      case "fold": {
        const held = sketch.id === folds.things ? sketch.records : sketch.hidden.under;
        const there = sketch.id === folds.things ? print.thing : print.node;
        return { standing: null, later: !held.some(there) };
      }
      default: {
        const ids = sketch.as === "pile" ? sketch.records : [sketch.id];
        const shown = ids.filter(print.node);
        const found = new Set(shown.map((id) => standings.get(id) ?? null));
        return { standing: found.size === 1 ? ([...found][0] ?? null) : null, later: shown.length === 0 };
      }
    }
  };
}

/** The four standings as the map writes them. */
export const standingWords: Readonly<Record<Standing, Said>> = {
  stands: say`stands`,
  open: say`open`,
  falls: say`falls`,
  unsupported: say`unsupported`,
};

/** The line under a claim, a number as it was then, or what a number says of a claim. */
function saidOf(model: Reported, { as, id, records }: Sketch): Text | null {
  const { graph, judgement, derivations } = model;
  switch (as) {
    case "claim": {
      const standing = judgement.standings.get(id);
      const holders = holdersOf(graph, judgement, id).filter((one) => one.until === null);
      const names = holders.slice(0, 2).map((one) => familyText(labelText(graph, one.scholar)));
      const said = standing === undefined ? "" : standingWords[standing];
      if (names.length === 0) return said;
      const more = holders.length - names.length;
      return more > 0
        ? say`${said} · ${row(names, "comma")} +${count(more)}`
        : say`${said} · ${row(names, "comma")}`;
    }
    case "number":
      return numberValue(graph, derivations.byId.get(id));
    case "step": {
      const derived = derivations.byId.get(records[0] ?? "");
      const said = derived?.bearings.find(({ claim }) => id === `${derived.id}>${claim}`);
      return said === undefined ? null : bearingWords[said.bearing];
    }
    default:
      return null;
  }
}
