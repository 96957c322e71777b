import type { Id } from "../../../base/finding.ts";
import type { Citing, Inline, Inlines } from "../../../show/telling/blocks/block.ts";
import type { Cite, References } from "../../references/references.ts";
import type { Runs } from "../../references/runs.ts";
import { calledAfter } from "./called.ts";
import type { SetInline, SetInlines } from "./set-text.ts";

/** A text while it is being set: its notes as they are called, and where its links may lead. */
export interface Setting {
  readonly references: References;
  /** The language of our own sentences, where it is not that of the text. */
  readonly ours: { readonly lang?: string };
  readonly anchors: ReadonlySet<string>;
  /** The anchor of the computation with a key; null where the text declares none. */
  readonly computation: (run: string) => string | null;
  readonly notes: SetInlines[];
  /** Of every source cited in notes, the first note that does. */
  readonly firstNote: Map<Id, number>;
}

/** Inlines with citations as the style has them, in the text or as notes, and links that lead nowhere as mere words. */
export function setInlines(of: Inlines, at: Setting): SetInlines {
  return calledAfter(of.flatMap((one) => setInline(one, at, null)));
}

/** `note` is the number of the note it stands in; null in the text itself. */
function setInline(one: Inline, at: Setting, note: number | null): SetInlines {
  if (typeof one === "string") return [{ is: "text", text: one }];
  if ("say" in one) return [{ is: "text", text: one, ...at.ours }];
  const within = (of: Inlines): SetInlines => of.flatMap((inner) => setInline(inner, at, note));
  switch (one.is) {
    case "words":
    case "standing":
      return [one];
    case "strong":
    case "emphasis":
      return [{ is: one.is, of: within(one.of) }];
    case "printed":
      return [{ ...one, to: at.computation(one.run) }];
    case "link":
      return at.anchors.has(one.to) ? [{ is: "link", to: one.to, of: within(one.of) }] : within(one.of);
    case "note":
      if (note === null)
        return [called(at, (number) => one.of.flatMap((inner) => setInline(inner, at, number)))];
      return [{ is: "text", text: " (" }, ...within(one.of), { is: "text", text: ")" }];
    case "citing":
      return at.references.inNotes ? citedByNote(one, at, note) : citedInText(one, at);
  }
}

/** Takes the next number for a note, then sets what it says: notes are numbered as they are called. */
function called(at: Setting, say: (number: number) => SetInlines): SetInline {
  const place = at.notes.push([]) - 1;
  at.notes[place] = say(place + 1);
  return { is: "note", number: place + 1 };
}

function citedInText({ manner, cites }: Citing, { references }: Setting): SetInlines {
  if (manner === "aside") return [runs(references.cited(cites))];
  const one = manner === "sentence" ? references.narrative : references.yearOnly;
  return cites.flatMap((cite, place): SetInlines => [
    ...(place === 0 ? [] : [between(place, cites.length)]),
    runs(one(cite)),
  ]);
}

/** In a style of notes a citation is a note; one that is part of the sentence leaves the name in it. */
function citedByNote({ manner, cites }: Citing, at: Setting, note: number | null): SetInlines {
  const names =
    manner === "sentence"
      ? cites.flatMap((cite, place): SetInlines => [
          ...(place === 0 ? [] : [between(place, cites.length)]),
          runs(at.references.narrative({ id: cite.id })),
        ])
      : [];
  if (note === null) return [...names, called(at, (number) => [runs(noted(cites, at, number))])];
  const said = noted(cites, at, note);
  return manner === "aside"
    ? [runs(said)]
    : [...names, { is: "text", text: " (" }, runs(said), { is: "text", text: ")" }];
}

function noted(cites: readonly Cite[], at: Setting, note: number): Runs {
  const told = at.references.cited(
    cites.map((cite) => {
      const first = at.firstNote.get(cite.id);
      return first === undefined ? cite : { ...cite, firstNote: first };
    }),
  );
  for (const { id } of cites) if (!at.firstNote.has(id)) at.firstNote.set(id, note);
  return told;
}

const runs = (of: Runs): SetInline => ({ is: "runs", runs: of });
const between = (place: number, all: number): SetInline => ({
  is: "text",
  text: place === all - 1 ? " and " : ", ",
});
