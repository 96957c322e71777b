import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { first } from "../../../../base/text/said/said.ts";
import type { Plan } from "../../../../plan/plan.ts";
import type { Plugin } from "../../../../plugin.ts";
import { withoutStop } from "../../../../link/names/label.ts";
import type { Examination } from "../../../../link/suppose/examination.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { named } from "../../../judged/standpoints/named.ts";
import type { Named } from "../../../judged/standpoints/named.ts";
import { examinationLine } from "../../../plan/line.ts";
import type { ExaminationLine } from "../../../plan/line.ts";
import { linesOf } from "../../../plan/page.ts";
import type { Reported } from "../../../report/report.ts";
import type { VisitAsked } from "../asked.ts";
import { visitedIn } from "./examined.ts";
import { featureRows } from "./features.ts";
import type { FeatureRow } from "./features.ts";
import { measureRows } from "./measures.ts";
import type { MeasureRow } from "./measures.ts";
import { pictureRows } from "./pictures.ts";
import type { PictureRow } from "./pictures.ts";
import { thingLines } from "./things.ts";
import type { ThingLine } from "./things.ts";

/** What a visit is for: what to measure and between which points, what to look for, what to picture. */
export interface VisitSheet {
  readonly asked: VisitAsked;
  readonly title: Text;
  /** The title of the corpus. */
  readonly corpus: string;
  readonly examinations: readonly ExaminedLine[];
  /** The same as they are planned: keepers, permits, cautions, and what each outcome decides; null while that is worked out. */
  readonly looks: readonly ExaminationLine[] | null;
  readonly costsIn: string;
  readonly things: readonly ThingLine[];
  /** What else the keeper has. */
  readonly others: readonly Named[];
  readonly measures: readonly MeasureRow[];
  readonly features: readonly FeatureRow[];
  readonly pictures: readonly PictureRow[];
  /** Who may have been there, and what of the bibliography it may be said in. */
  readonly scholars: readonly Named[];
  readonly sources: readonly Named[];
}

/** An examination of a visit and what may come of it. */
export interface ExaminedLine {
  readonly id: Id;
  readonly method: Text;
  readonly destructive: boolean;
  readonly outcomes: readonly { readonly id: Id; readonly text: Text }[];
}

/** The sheet of a visit, with nothing withheld on it; null where there is no such examination or keeper. */
export function visitSheet(
  model: Reported,
  asked: VisitAsked,
  planned: { readonly plan: Plan; readonly plugins: readonly Plugin[] } | null,
): VisitSheet | null {
  const { graph } = model;
  const visited = visitedIn(graph, asked);
  if (!visited) return null;
  const measures = measureRows(graph, visited);
  const features = featureRows(graph, visited);
  const on = [...visited.things, ...measures.map((one) => one.of.id)];
  const things = thingLines(graph, [...new Set(on)]);
  const withheld = withheldIn(graph);
  const shown = (id: Id): boolean => !withheld(id);
  const [only] = visited.examinations;
  return {
    asked,
    title: asked.examination !== null && only ? nameOf(only) : say`Visit to ${asked.keeper ?? ""}`,
    corpus: graph.settings.title,
    examinations: visited.examinations.map((one) => ({
      id: one.id,
      method: nameOf(one),
      destructive: one.destructive,
      outcomes: one.outcomes.map(({ id, text }) => ({ id, text })),
    })),
    looks: planned && looksIn(model, visited.examinations, planned),
    costsIn: graph.settings.costsIn,
    things,
    others: visited.others.map((id) => named(graph, id)),
    measures,
    features,
    pictures: pictureRows(thingLines(graph, visited.things), measures, features),
    scholars: graph
      .list("scholars")
      .filter(({ id }) => shown(id))
      .map(({ id }) => named(graph, id)),
    sources: [...graph.sources.keys()].filter(shown).map((id) => named(graph, id)),
  };
}

function looksIn(
  model: Reported,
  examinations: readonly Examination[],
  { plan, plugins }: { readonly plan: Plan; readonly plugins: readonly Plugin[] },
): readonly ExaminationLine[] {
  const lines = linesOf(model, plugins, plan);
  const all = new Map([...plan.recorded, ...plan.proposed].map((one) => [one.examination.id, one]));
  return examinations.flatMap(({ id }) => {
    const one = all.get(id);
    return one ? [examinationLine(lines, one, null)] : [];
  });
}

function nameOf({ method }: Examination): Text {
  if (typeof method !== "string") return first(method);
  const name = withoutStop(method);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
