import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import { drawingOf } from "../../artefacts/drawing/drawing.ts";
import type { Reported } from "../../report/report.ts";
import { shownUnder, withheldIn } from "../../withhold.ts";
import { upperFirst } from "./shown/upper.ts";

/** Most things that are drawn beside one another in the first picture of a talk. */
const mostDrawn = 3;

/** The picture that a talk opens with: the first that may be published, else things drawn to scale; none where neither is to be had. */
export function picturesToOpen(model: Reported): readonly WrittenMap[] {
  const { graph } = model;
  const [shown, withheld] = [shownUnder(model), withheldIn(graph)];
  const image = graph
    .list("images")
    .find(({ id, values }) => shown(id) && values.publish === true && !values.of.some(withheld));
  if (image !== undefined) return [{ show: { image: image.id }, text: sentenceOf(model, image.values.of) }];
  const things = graph
    .list("artefacts")
    .filter(({ id }) => (drawingOf(model, [id])?.groups.flat().length ?? 0) > 0)
    .slice(0, mostDrawn)
    .map(({ id }) => id);
  return things.length === 0 ? [] : [{ show: { drawing: things }, text: sentenceOf(model, things) }];
}

function sentenceOf({ graph }: Reported, things: readonly Id[]): string {
  return `${upperFirst(things.map((id) => labelOf(graph, id)).join(", "))}.`;
}
