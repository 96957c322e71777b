import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Lens } from "../../../derive/lens.ts";
import type { Linked } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Plugin } from "../../../plugin.ts";
import { ofAllYears } from "../../judged/suppose/supposed.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";
import { aroundTold } from "./shown/around.ts";
import { citedFor } from "./shown/cited.ts";
import { imageTold } from "./shown/image.ts";
import { drawingTold, figureTold } from "./shown/picture.ts";
import { questionTold } from "./shown/question.ts";
import { recordsTold } from "./shown/record.ts";
import { onceEach } from "./shown/setting.ts";
import type { Setting, Told } from "./shown/setting.ts";
import { tableTold } from "./shown/table.ts";
import { askedBy } from "./shown/wanted.ts";
import type { Wanted } from "./shown/wanted.ts";
import { ofCorpus, ours } from "./slides.ts";
import type { Slide, Slides, Worded } from "./slides.ts";

/** What a talk is made from: the model under the lens that is looked through, and the one under any other. */
export interface TalkDesk {
  readonly model: Reported;
  readonly under: (lens: Lens) => Reported;
  readonly plugins: readonly Plugin[];
  /** Puts what is written on a map into the reader's language; into English unless told otherwise. */
  readonly told?: (text: Text) => string;
}

type Talk = Linked<"talks">;
type Step = Talk["values"]["steps"][number];

/** A talk as it is shown under the model's lens; null where there is none of that name that may be shown. */
export function talkOf(desk: TalkDesk, id: Id): Slides | null {
  const { graph } = desk.model;
  const talk = graph.records.get(id);
  if (talk?.list !== "talks" || withheldIn(graph)(id)) return null;
  const { title, authors, language } = graph.settings;
  const steps = talk.values.steps.map((step, place) => slideOf(desk, step, place));
  const names = authors.map((author) => author.name);
  const first: Slide = {
    step: null,
    title: ofCorpus(talk.values.title),
    asOf: null,
    parts: [],
    notes: null,
    cited: [],
  };
  return {
    id,
    title: talk.values.title,
    corpus: title,
    authors: names,
    language,
    slides: [first, ...steps],
    sources: [...new Set(steps.flatMap((slide) => slide.cited.map((one) => one.id)))],
  };
}

/** The years as of which a talk shows something, each once. */
export function yearsIn(talk: Talk): readonly number[] {
  return [...new Set(talk.values.steps.flatMap((step) => askedBy(step.show).asOf ?? []))];
}

function slideOf(desk: TalkDesk, step: Step, place: number): Slide {
  const { wanted, asOf } = askedBy(step.show);
  const { lens } = desk.model;
  const model = asOf === null ? desk.model : desk.under({ ...lens, asOf });
  const whole = desk.under(ofAllYears(lens));
  const setting: Setting = { model, whole, plugins: desk.plugins, told: desk.told ?? inEnglish };
  const told = wanted.map((one) => toldOf(setting, one));
  return {
    step: place,
    title: step.text === undefined ? titleFor(setting, wanted) : ofCorpus(step.text),
    asOf: asOf ?? lens.asOf ?? null,
    parts: onceEach(told.flatMap(({ parts }) => parts)),
    notes: step.notes ?? null,
    cited: citedFor(
      model,
      told.flatMap(({ about }) => about),
    ),
  };
}

function toldOf(setting: Setting, wanted: Wanted): Told {
  switch (wanted.is) {
    case "records":
      return recordsTold(setting, wanted.ids);
    case "question":
      return questionTold(setting, wanted.id);
    case "around":
      return aroundTold(setting, wanted.id, wanted.steps);
    case "figure":
      return figureTold(setting, wanted.id);
    case "drawing":
      return drawingTold(setting, wanted.ids);
    case "image":
      return imageTold(setting, wanted.id);
    case "table":
      return tableTold(setting, wanted.kind);
  }
}

/** What a step without words of its own is called: what it shows first. */
function titleFor({ model }: Setting, [first]: readonly Wanted[]): Worded {
  if (first === undefined || first.is === "table") return ours(say`What there is`);
  const id = first.is === "records" || first.is === "drawing" ? first.ids[0] : first.id;
  return ours(id === undefined ? say`What there is` : labelText(model.graph, id));
}
