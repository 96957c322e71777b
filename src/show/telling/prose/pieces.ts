import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import { withoutStop } from "../../../link/names/label.ts";
import type { Plugin } from "../../../plugin.ts";
import type { CitationPiece, NumberPiece, ProsePiece } from "../../../read/prose/prose.ts";
import { numberLines, valueWords } from "../../numbers/value.ts";
import type { Reported } from "../../report/report.ts";
import type { Inline, Inlines } from "../blocks/block.ts";
import { embedded } from "../review/pieces/embedded.ts";

/** What prose is woven with. */
export interface Weaving {
  readonly model: Reported;
  readonly plugins: readonly Plugin[];
  readonly withheld: (id: Id) => boolean;
  /** Claims that may be named under the lens. */
  readonly listed: (claim: Id) => boolean;
  /** Records that count under the lens and are not withheld. */
  readonly counts: (id: Id) => boolean;
  /** Words of the corpus that are no names. */
  readonly common: ReadonlySet<string>;
}

/** What stands on both sides of a piece in its line. */
export interface Beside {
  readonly before: string;
  readonly after: string;
}

/** What the corpus says where a piece of prose leads; of what is withheld only that it is. */
export function pieceInlines(piece: ProsePiece, weaving: Weaving, beside: Beside): Inlines {
  switch (piece.is) {
    case "claim":
      return claimInlines(piece.id, weaving, beside);
    case "number":
      return numberInlines(piece, weaving);
    case "citation":
      return citationInlines(piece, weaving);
  }
}

const hidden: Inline = say`[withheld]`;
const notThere: Inline = say`[not in the record]`;

function claimInlines(id: Id, { model, withheld, listed, common }: Weaving, beside: Beside): Inlines {
  const record = model.graph.records.get(id);
  if (withheld(id)) return [hidden];
  if (record?.list !== "claims") return [notThere];
  if (!listed(id)) return [say`[not yet in print]`];
  const { text } = record.values;
  const words = (said: string): Inlines => [{ is: "words", text: said, lang: null, quoted: false }];
  // A sentence of its own keeps its stop, and one inside another has neither stop nor, where that is sure, a capital.
  const begins = /(?:^|[.!?…:»”"’)\]]\s+)$/u.test(beside.before);
  const ends = beside.after === "" || /^\s+[\p{Lu}\p{Lt}“«"]/u.test(beside.after);
  if (begins) return words(ends ? text : withoutStop(text));
  return words(embedded(text, model.graph.settings.language, common) ?? withoutStop(text));
}

function numberInlines({ id, name }: NumberPiece, { model, plugins, withheld, counts }: Weaving): Inlines {
  const record = model.graph.records.get(id);
  const derived = model.derivations.byId.get(id);
  if (withheld(id)) return [hidden];
  if (record?.list !== "derivations" || derived === undefined) return [notThere];
  if (!counts(id)) return [say`[not yet in print]`];
  if (derived.status === "pending") return [say`[being computed]`];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const line = numberLines(derived, plugin).find((one) => one.name === name);
  if (line === undefined || derived.run === null) return [say`[not computed]`];
  return [{ is: "printed", text: valueWords(line), run: derived.run.key }];
}

function citationInlines({ cites }: CitationPiece, { model, withheld }: Weaving): Inlines {
  const { graph } = model;
  const hides = cites.some(({ id }) => withheld(id) || sourceOf(model, id).some(withheld));
  const told = cites.flatMap(({ id, place }) => {
    const passage = graph.records.get(id);
    const [source] = sourceOf(model, id);
    if (withheld(id) || source === undefined || withheld(source) || !graph.sources.has(source)) return [];
    const at = place ?? (passage?.list === "passages" ? passage.values.at : null);
    return [at === null ? { id: source } : { id: source, at }];
  });
  const citing: Inlines = told.length === 0 ? [] : [{ is: "citing", manner: "aside", cites: told }];
  if (hides) return told.length === 0 ? [hidden] : [...citing, " ", hidden];
  return told.length === 0 ? [notThere] : citing;
}

/** The source that a citation leads to, through a passage too. */
function sourceOf({ graph }: Reported, id: Id): readonly Id[] {
  if (graph.sources.has(id)) return [id];
  return graph.records.get(id)?.list === "passages" ? graph.provenance(id).sources.slice(0, 1) : [];
}
