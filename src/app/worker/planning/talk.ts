import type { Id } from "../../../base/finding.ts";
import type { Slides } from "../../../show/telling/talk/slides.ts";
import { talkOf, yearsIn } from "../../../show/telling/talk/talk.ts";
import { inLanguage } from "../../words/reader/tongues.ts";
import type { Desk } from "../desk.ts";
import { plugins } from "../plugins.ts";

/** A talk as its page shows it. */
export interface TalkPage {
  readonly id: Id;
  /** Null where there is none of that name that may be shown. */
  readonly slides: Slides | null;
  /** How many numbers of it are still to be computed. */
  readonly pending: number;
}

/** A talk with the numbers of every year that it shows, asked for where they are not there. */
export function talkAt(desk: Desk, id: Id, language: "en" | "ar"): TalkPage {
  const { model, under, need } = desk;
  const talk = model.graph.records.get(id);
  const years = talk?.list === "talks" ? yearsIn(talk) : [];
  const models = [model, ...years.map((asOf) => under({ ...model.lens, asOf }))];
  const missing = models.flatMap((one) => one.derivations.missing);
  need(missing);
  return {
    id,
    slides: talkOf({ model, under, plugins, told: inLanguage[language] }, id),
    pending: new Set(missing.map((run) => run.key)).size,
  };
}
