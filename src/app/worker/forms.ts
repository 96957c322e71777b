import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../../link/withheld.ts";
import { ownWritten } from "../../read/edit/head.ts";
import { saysSame } from "../../read/edit/written.ts";
import type { WrittenMap } from "../../read/edit/written.ts";
import type { ListName } from "../../read/grammar/field.ts";
import type { Text } from "../../base/text/said/said.ts";
import { answerThrough } from "../model/door/serving.ts";
import { checkedForm } from "../../show/desk/forms/checked/checked.ts";
import type { Checked } from "../../show/desk/forms/checked/checked.ts";
import type { PictureAsked, PictureTold } from "../../show/artefacts/picture/asked.ts";
import { measuredOnPicture } from "../../show/artefacts/picture/measuring.ts";
import { seenOf } from "../../show/desk/forms/filled/asked.ts";
import type { FormAsked } from "../../show/desk/forms/filled/asked.ts";
import { recordOf } from "../../show/desk/forms/filled/found.ts";
import type { Help } from "../../show/desk/forms/layout.ts";
import { choicesFor, textsUsed } from "../../show/desk/forms/offered/choices.ts";
import { quantitiesIn } from "../../show/desk/papers/capture/quantities.ts";
import type { QuantityIn } from "../../show/desk/papers/capture/quantities.ts";
import { referringTo } from "../../show/desk/forms/offered/referring.ts";
import type { Referring } from "../../show/desk/forms/offered/referring.ts";
import type { Choices } from "../../show/desk/forms/offered/choices.ts";
import { sayingOf } from "../../show/desk/forms/checked/saying.ts";
import type { Saying } from "../../show/desk/forms/checked/saying.ts";
import { visitTold } from "../../show/desk/visit/filled/told.ts";
import type { VisitTold } from "../../show/desk/visit/filled/told.ts";
import type { Returned } from "../../show/desk/visit/returned.ts";
import { troubleWithName } from "../../show/desk/forms/checked/renamed.ts";

/** What a form asks of the model while it is filled in, and what each question is answered with. */
export interface FormQuestions {
  readonly check: (form: FormAsked) => Checked;
  /** What is to be written, and what the record said when the form was opened. */
  readonly say: (form: FormAsked) => Pick<Saying, "values" | "seen">;
  readonly choose: (wanted: { readonly from: Help; readonly text: string; readonly most: number }) => Choices;
  /** What speaks against another id; null where nothing does. */
  readonly rename: (wanted: { readonly id: Id; readonly to: string }) => Text | null;
  /** What names a record: what would be left hanging without it, and what follows when it gets another name. */
  readonly referring: (wanted: { readonly id: Id }) => Referring;
  /** The quantities that stand in some words. */
  readonly quantities: (wanted: { readonly text: string }) => readonly QuantityIn[];
  /** What a record says now, as its form would show it; null where it is gone. */
  readonly seen: (wanted: { readonly list: ListName; readonly id: Id }) => WrittenMap | null;
  /** What a record without an id of its own is called, told by what it says; null where there is none. */
  readonly find: (wanted: { readonly list: ListName; readonly values: WrittenMap }) => Id | null;
  /** What comes of what is being measured on a picture; null where it is not there. */
  readonly picture: (wanted: PictureAsked) => PictureTold | null;
  /** What was filled in on a visit comes to. */
  readonly visit: (sheet: Returned) => VisitTold;
}

/** Answers forms through a door. */
export function serveForms(port: MessagePort, graph: () => Graph | null): void {
  answerThrough<FormQuestions>(port, () => {
    const now = graph();
    return now && answersFrom(now);
  });
}

function answersFrom(graph: Graph): FormQuestions {
  return {
    check: (form) => checkedForm(graph, form),
    say: (form) => {
      const { values, seen } = sayingOf(graph, form);
      return { values, seen };
    },
    choose: ({ from, text, most }) =>
      from.from === "used" ? textsUsed(graph, from, text, most) : choicesFor(graph, from.to, text, most),
    referring: ({ id }) => referringTo(graph, id),
    quantities: ({ text }) => quantitiesIn(text, graph.settings.quantities),
    rename: ({ id, to }) => troubleWithName(graph, id, to),
    seen: (wanted) => {
      const record = withheldIn(graph)(wanted.id) ? null : recordOf(graph, wanted);
      return record && seenOf(graph, record);
    },
    visit: ({ asked, filled }) => visitTold(graph, asked, filled),
    find: ({ list, values }) => {
      const same = graph.list(list).filter((one) => saysSame(ownWritten(one), values));
      return same.at(-1)?.id ?? null;
    },
    picture: (wanted) => measuredOnPicture(graph, wanted),
  };
}
