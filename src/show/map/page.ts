import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Lens } from "../../derive/lens.ts";
import { ofAllYears } from "../judged/suppose/supposed.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { changesBetween, yearBefore, yearsOf } from "./changes.ts";
import { layOut } from "./layout/layout.ts";
import type { MapPage, MapView, Scene } from "./scene.ts";
import { drawnBy } from "./section/section.ts";
import type { Drawn } from "./section/section.ts";
import type { Net } from "./section/net/net.ts";
import { statesOf } from "./states.ts";

/** What a map is made from: the model under the lens that is looked through, and the one under any other. */
export interface MapDesk {
  readonly model: Reported;
  readonly under: (lens: Lens) => Reported;
  /** Puts what is written on the map into the reader's language; into English unless told otherwise. */
  readonly told?: Net["told"];
}

/** A map laid out: the model it was drawn from, the view, and its scene. */
export interface Laid {
  readonly whole: Reported;
  readonly view: MapView;
  readonly drawn: Drawn;
  readonly scene: Scene;
}

/** Lays a view out; what lay before keeps its place as far as it is of the same question. */
export function laidOut(
  whole: Reported,
  asked: MapView,
  before: Laid | null,
  told: Net["told"] = inEnglish,
): Laid {
  const view = known(whole, asked);
  if (before && before.whole === whole && same(before.view, view)) return before;
  const drawn = drawnBy(whole, view, told);
  const alike = before !== null && ground(before.view) === ground(view);
  const scene = layOut(drawn.section, alike ? { told, before: before.scene } : { told });
  return { whole, view, drawn, scene };
}

/** The map under the lens: the whole dispute's section, with each box as it stands then. */
export function mapPage(desk: MapDesk, asked: MapView, before: Laid | null = null): MapPage {
  const { model, under, told = inEnglish } = desk;
  const laid = laidOut(under(ofAllYears(model.lens)), asked, before, told);
  const { drawn, scene, view } = laid;
  const years = yearsOf(model);
  const year = model.lens.asOf;
  const last = year === undefined ? null : yearBefore(years, year);
  const earlier = last === null ? null : under({ ...model.lens, asOf: last });
  const { field, section, foldedByItself } = drawn;
  const states = statesOf(drawn, model, earlier, view.focus);
  return {
    view,
    scene,
    states,
    beaten: section.attacks
      .filter(({ from }) => !["stands", "open"].includes(states[from]?.standing ?? ""))
      .map(({ id }) => id),
    questions: questionsOf(model),
    years,
    foldedByItself: foldedByItself === null ? null : told(foldedByItself),
    changes: earlier ? changesBetween(field.net, drawn.all, earlier, model).map(told) : [],
  };
}

/** A maker of maps that remembers the last one, so that little moves from one to the next. */
export function rememberedMaps(): (desk: MapDesk, asked: { readonly view: MapView }) => MapPage {
  let before: Laid | null = null;
  return (desk, { view }) => {
    before = laidOut(desk.under(ofAllYears(desk.model.lens)), view, before, desk.told);
    return mapPage(desk, view, before);
  };
}

function questionsOf({ graph }: Reported): MapPage["questions"] {
  const withheld = withheldIn(graph);
  return graph
    .list("questions")
    .filter(({ id }) => !withheld(id))
    .map(({ id, values }) => ({ id, text: values.text }));
}

/** A view without what the corpus does not have, or withholds. */
function known({ graph }: Reported, view: MapView): MapView {
  const withheld = withheldIn(graph);
  const there = (id: Id): boolean => graph.records.has(id) || graph.sources.has(id);
  // A number's argument goes by the number's name and that of the claim it bears on.
  const is = (id: Id | null): id is Id =>
    id !== null &&
    !withheld(id) &&
    (there(id) || id.split(">").every((part) => there(part) && !withheld(part)));
  const question = is(view.question) && graph.records.get(view.question)?.list === "questions";
  const focus = is(view.focus) ? view.focus : null;
  return { ...view, question: question ? view.question : null, focus, only: view.only && focus !== null };
}

function same(a: MapView, b: MapView): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** What two views must share for a place in one to mean anything in the other. */
function ground({ question, only, narrow, focus }: MapView): string {
  return JSON.stringify([question, narrow, only || narrow ? focus : null]);
}
