import type { Id } from "../../../base/finding.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { speakerOf } from "../../../link/names/spoken.ts";
import { outlineOf } from "./branch.ts";
import type { Branch } from "./branch.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";

/** A branch of the outline in words. */
export interface OutlineLine {
  readonly id: Id;
  readonly text: Text;
  readonly role: Branch["role"] | "question";
  readonly standing: Standing | null;
  readonly again: boolean;
  /** The record that its name leads to; an argument that a number makes leads to the number. */
  readonly to: Id;
  readonly under: readonly OutlineLine[];
  /** There is something under it, which is told when it is asked for. */
  readonly closed?: true;
}

/**
 * The whole graph as an outline: questions, answers, arguments, evidence, things; then claims that answer nothing. Where some
 * lines are named in `open`, what is under the topmost ones is told of those alone.
 */
export function outlinePage(model: Reported, open: ReadonlySet<Id> | null = null): readonly OutlineLine[] {
  const { graph, judgement } = model;
  const { pro, contra } = judgement.compiled;
  const isOpen = (id: Id): boolean => open === null || open.has(id);
  const withheld = withheldIn(graph);
  const listed = (claim: Id): boolean =>
    judgement.counts(claim) && judgement.listed(claim) && !withheld(claim);
  const line = (branch: Branch): OutlineLine => ({
    id: branch.id,
    text: labelText(graph, branch.id),
    role: branch.role,
    standing: branch.standing,
    again: branch.again,
    to: graph.records.has(branch.id) ? branch.id : speakerOf(branch.id),
    under: branch.under.map(line),
  });
  const answering = new Set<Id>();
  const asked = graph.list("questions").filter(({ id }) => !withheld(id));
  const questions = asked.map(({ id, values }): OutlineLine => {
    const answers = values.answers.filter(listed);
    for (const claim of answers) answering.add(claim);
    if (!isOpen(id)) {
      const head = { id, text: values.text, role: "question", standing: null, again: false, to: id } as const;
      return { ...head, under: [], ...(answers.length > 0 ? { closed: true } : {}) };
    }
    const under = answers.map((claim) => line(outlineOf(graph, judgement, claim)));
    return { id, text: values.text, role: "question", standing: null, again: false, to: id, under };
  });
  const used = new Set(judgement.compiled.arguments.flatMap((one) => [...one.because, ...one.against]));
  const others = graph
    .list("claims")
    .filter(({ id }) => listed(id) && !answering.has(id) && !used.has(id))
    .map(({ id }): OutlineLine => {
      if (isOpen(id)) return line(outlineOf(graph, judgement, id));
      const standing = judgement.standings.get(id) ?? null;
      const isMore = (pro.get(id) ?? []).length + (contra.get(id) ?? []).length > 0;
      const head = {
        id,
        text: labelText(graph, id),
        role: "answer",
        standing,
        again: false,
        to: id,
      } as const;
      return { ...head, under: [], ...(isMore ? { closed: true } : {}) };
    });
  return [...questions, ...others];
}
