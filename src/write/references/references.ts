import type { CitationItem } from "citeproc";
import type { Id } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import type { CslItem } from "../../read/bibliography/csl.ts";
import { bibliographyOf } from "./bibliography.ts";
import { linked } from "./linked.ts";
import { locatorOf } from "./locator.ts";
import { itemFor } from "./processor/item.ts";
import { runsOf } from "./processor/marks.ts";
import { newProcessor, withStyle } from "./processor/processor.ts";
import type { Manner } from "./processor/processor.ts";
import type { Runs } from "./runs.ts";

export { StyleFails } from "./processor/processor.ts";
export type { Manner } from "./processor/processor.ts";

/** A source that is cited, with the place in it as a scholar writes it (`p. 12, fig. 3`). */
export interface Cite {
  readonly id: Id;
  readonly at?: string;
  /** In a style of notes, the number of the note that cited it before: it is then cited in short. */
  readonly firstNote?: number;
}

/** One entry of a bibliography. */
export interface Entry {
  readonly id: Id;
  readonly runs: Runs;
}

/**
 * The sources of a text in one style. In a style of notes `cited` is the text of a note and `narrative` the names
 * alone. Every function throws `StyleFails` where the style cannot do it.
 */
export interface References {
  readonly inNotes: boolean;
  /** Between parentheses, as the style has them: `(Vane 1968, 12)`. */
  readonly cited: (cites: readonly Cite[]) => Runs;
  /** As part of a sentence: `Vane (1968, 12)`. */
  readonly narrative: (cite: Cite) => Runs;
  /** Where the name was said: `(1968, 12)`; nothing in a style that has no year there. */
  readonly yearOnly: (cite: Cite) => Runs;
  /** One entry as it stands alone, empty where the style prints nothing of it; in a style without a bibliography, the whole note. */
  readonly reference: (id: Id) => Runs;
  /** Every entry in the style's order, a name that is repeated as the style has it. */
  readonly bibliography: () => readonly Entry[];
  /** Other items from now on; only what they change is done anew. */
  readonly update: (items: Iterable<CslItem>) => void;
}

/** A source among the items: `key` is its name for the processor, another one whenever it changes. */
interface Held {
  readonly csl: CslItem;
  readonly key: string;
}

/** The references of items in a style; the order of the items says nothing. */
export function referencesIn(manner: Manner, items: Iterable<CslItem>): References {
  let held: ReadonlyMap<Id, Held> = new Map();
  let byKey: ReadonlyMap<string, CslItem> = new Map();
  let made = 0;
  const engine = newProcessor(manner, (key) => {
    const csl = byKey.get(key);
    return csl === undefined ? undefined : itemFor(csl, key);
  });
  const itemOf = (id: Id): Held => {
    const one = held.get(id);
    if (!one) throw new RangeError(`Unknown source ${id}, expected one of the items`);
    return one;
  };
  const list = bibliographyOf(engine, manner.style.includes("citation-number"), (key, marks) => {
    const csl = byKey.get(key);
    return csl ? linked(runsOf(marks), csl) : runsOf(marks);
  });

  const update = (next: Iterable<CslItem>): void => {
    const byId = new Map([...next].map((csl) => [csl.id, csl] as const));
    const ordered = [...byId].sort(([a], [b]) => byText(a, b));
    const now = new Map(
      ordered.map(([id, csl]): readonly [Id, Held] => {
        const before = held.get(id);
        return [id, before && isSame(before.csl, csl) ? before : { csl, key: `r${made++}` }];
      }),
    );
    if (now.size === held.size && [...now].every(([id, one]) => held.get(id) === one)) return;
    held = now;
    const keys = [...now.values()].map((one) => one.key);
    byKey = new Map([...now.values()].map((one) => [one.key, one.csl]));
    withStyle(() => list.take(keys));
  };
  update(items);

  const citation = ({ id, at, firstNote }: Cite, more: Partial<CitationItem> = {}): CitationItem => {
    const { csl, key } = itemOf(id);
    const again = firstNote === undefined ? {} : { position: 1, "first-reference-note-number": firstNote };
    return { id: key, ...(at === undefined ? {} : locatorOf(at, csl.volume)), ...again, ...more };
  };
  const cluster = (cites: readonly CitationItem[]): Runs =>
    withStyle(() => runsOf(engine.makeCitationCluster(cites)));
  const namesAlone = (cite: Cite): Runs => cluster([{ id: citation(cite).id, "author-only": true }]);
  const yearOnly = (cite: Cite): Runs => cluster([citation(cite, { "suppress-author": true })]);
  const cited = (cites: readonly Cite[]): Runs => cluster(cites.map((cite) => citation(cite)));

  return {
    inNotes: engine.opt.xclass === "note",
    cited,
    narrative: (cite) => {
      const [names, year] = [namesAlone(cite), engine.opt.xclass === "note" ? [] : yearOnly(cite)];
      if (names.length === 0) return cited([cite]);
      return year.length === 0 ? names : [...names, { text: " " }, ...year];
    },
    yearOnly,
    reference: (id) => {
      const { key, csl } = itemOf(id);
      return withStyle(() => list.alone(key)) ?? linked(cited([{ id }]), csl);
    },
    bibliography: () => {
      const ids = new Map([...held].map(([id, one]) => [one.key, id]));
      const entries = withStyle(() => list.entries());
      if (!entries) return [...held.keys()].map((id) => ({ id, runs: cited([{ id }]) }));
      return entries.flatMap(({ key, runs }) => {
        const id = ids.get(key);
        return id === undefined ? [] : [{ id, runs }];
      });
    },
    update,
  };
}

function isSame(one: CslItem, other: CslItem): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
