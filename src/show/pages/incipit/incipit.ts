import type { Id } from "../../../base/finding.ts";
import { readCorpus } from "../../../read/read.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { listsFirst } from "./first.ts";

/** A question as it is asked, with the words of its answers: what can be told before the rest has been read. */
export interface Asked {
  readonly id: Id;
  readonly text: string;
  readonly exclusive: boolean;
  readonly answers: readonly { readonly claim: Id; readonly text: string }[];
}

/** The opening words of a corpus: its title and its questions, with nothing yet of what stands. */
export interface Incipit {
  readonly title: string;
  readonly language: string;
  readonly questions: readonly Asked[];
}

/**
 * Tells the questions from the files that hold them, and from no others; null where the settings cannot be read. Where
 * something is withheld, it also passes over every name that has another's in it, since that other is not read yet.
 */
export function incipitOf(files: readonly SourceFile[]): Incipit | null {
  const reading = readCorpus(files.map(listsFirst), new Map());
  if (!("settings" in reading)) return null;
  const { settings, records } = reading;
  const secret = new Set(settings.withhold);
  const shown = (id: Id): boolean => secret.size === 0 || !(secret.has(id) || id.includes("/"));
  const texts = new Map<Id, string>();
  const questions = new Map<Id, Omit<Asked, "answers"> & { readonly answers: readonly Id[] }>();
  for (const { list, id, values } of records) {
    if (id === null || !shown(id) || texts.has(id) || questions.has(id)) continue;
    if (list === "claims") texts.set(id, values.text);
    if (list !== "questions") continue;
    const { text, exclusive = true, answers } = values;
    questions.set(id, { id, text, exclusive, answers });
  }
  return {
    title: settings.title,
    language: settings.language,
    questions: [...questions.values()].map((one) => ({
      ...one,
      answers: one.answers.flatMap((claim) => {
        const text = texts.get(claim);
        return text === undefined ? [] : [{ claim, text }];
      }),
    })),
  };
}
