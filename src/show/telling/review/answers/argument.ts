import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Argument } from "../../../../judge/argument.ts";
import { schemeText } from "../../../../link/names/label.ts";
import { speakerOf } from "../../../../link/names/spoken.ts";
import type { ArgumentRecord } from "../../../../link/graph.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { subjectOf } from "../pieces/cites.ts";
import type { Subject } from "../pieces/cites.ts";
import { begun, listed, told } from "../pieces/inlines.ts";
import { doubted, premisesOf } from "./premise.ts";
import { resultOf } from "./result.ts";

const withheldSays: Readonly<Record<Bringing, Said>> = {
  for: say`Something that is withheld speaks for it.`,
  against: say`Something that is withheld speaks against it.`,
  objects: say`Something that is withheld speaks against this.`,
  replies: say`Something that is withheld answers that.`,
};

/** How an argument is brought in: for a claim, against one, against a step or a piece of evidence, or in reply to that. */
export type Bringing = "for" | "against" | "objects" | "replies";

/**
 * An argument in sentences: whose it is, how it goes, what it leans on and how strong it is; `lead` begins the first of
 * them. Of one that is withheld only that there is one.
 */
export function argumentSentences(
  sight: Sight,
  argument: Argument,
  bringing: Bringing,
  lead: Said | null = null,
): readonly Inlines[] {
  const { graph } = sight;
  const speaker = speakerOf(argument.from);
  const record = graph.records.get(speaker);
  if (sight.withheld(speaker)) return [[withheldSays[bringing]]];
  if (record?.list === "derivations") return [resultSentence(sight, record.id, argument, bringing)];
  if (record?.list === "positions") return [testimony(sight, record.id, bringing)];
  if (record?.list !== "arguments") return [];
  const subject = subjectOf(sight, record.id);
  return [
    [
      ...(lead === null ? begun(subject.of) : [lead, ...subject.of]),
      ...opening(sight, record, subject, bringing),
    ],
    leaning(sight, argument, subject),
    strengthOf(sight, record),
  ];
}

function opening(sight: Sight, { values }: ArgumentRecord, subject: Subject, bringing: Bringing): Inlines {
  const verb = [" ", verbOf(bringing, subject.several), ...schemeIn(values.scheme)];
  return [...verb, ...(values.text === undefined ? ["."] : [": ", ...told(sight, values.text)])];
}

function verbOf(bringing: Bringing, several: boolean): Said {
  if (bringing === "for") return several ? say`argue for it` : say`argues for it`;
  if (bringing === "against") return several ? say`argue against it` : say`argues against it`;
  if (bringing === "replies") return several ? say`argue` : say`argues`;
  return several ? say`object` : say`objects`;
}

function schemeIn(scheme: string | undefined): Inlines {
  return scheme === undefined || scheme === "other" ? [] : [" ", schemeText(scheme)];
}

/** What an argument leans on, each with where it is said and how it stands; of what is withheld only that there is some. */
function leaning(sight: Sight, { because }: Argument, subject: Subject): Inlines {
  const open = because.filter((id) => !sight.withheld(id));
  const premises = premisesOf(sight, open, subject.cites);
  const all = open.length < because.length ? [...premises, [say`something that is withheld`]] : premises;
  return all.length === 0 ? [] : [say`The argument leans on `, ...listed(all), "."];
}

function strengthOf(sight: Sight, { values }: ArgumentRecord): Inlines {
  const { strength, "why-strength": why } = values;
  if (strength === undefined || strength === "ordinary") return [];
  const said = strength === "weak" ? say`It is recorded as weak` : say`It is recorded as strong`;
  return why === undefined ? [said, "."] : [said, ": ", ...told(sight, why)];
}

/** What a computed number says for or against a claim. */
function resultSentence(sight: Sight, id: Id, argument: Argument, bringing: Bringing): Inlines {
  const lead =
    bringing === "for"
      ? say`A computed result speaks for it: `
      : bringing === "against"
        ? say`A computed result speaks against it: `
        : say`A computed result speaks against this: `;
  const weak: Inlines = argument.strength === "weak" ? [say`, taken as weak`] : [];
  return [lead, ...resultOf(sight, id), ...doubted(sight, id), ...weak, "."];
}

/** A scholar's word, where testimony counts. */
function testimony(sight: Sight, id: Id, bringing: Bringing): Inlines {
  const { of, several } = subjectOf(sight, id);
  if (bringing === "for")
    return [
      ...begun(of),
      several ? say` hold it, and testimony counts here` : say` holds it, and testimony counts here`,
      ".",
    ];
  return [
    ...begun(of),
    several ? say` reject it, and testimony counts here` : say` rejects it, and testimony counts here`,
    ".",
  ];
}
