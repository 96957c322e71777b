import type { Finding, Id } from "../base/finding.ts";
import type { QuantityKind } from "../base/quantity.ts";
import type { Source } from "../read/bibliography/read.ts";
import type { CitationStyle } from "../read/bibliography/style/style.ts";
import type { ListName } from "../read/grammar/field.ts";
import type { Prose } from "../read/prose/prose.ts";
import type { PluginFile } from "../read/source-file.ts";
import type { RecordOf, Spoilt } from "../read/record.ts";
import type { Companion } from "../read/settings/companions/corpus.ts";
import type { Settings } from "../read/settings/settings.ts";
import type { Supposed } from "./suppose/outcome.ts";
import type { Tie } from "./ties/tie.ts";

/** A record with its name and its references checked. */
export type Linked<L extends ListName> = {
  readonly [K in L]: RecordOf<K> & { readonly id: Id; readonly named: boolean };
}[L];

/** A linked record of any kind. */
export type AnyLinked = Linked<ListName>;

/** A claim in the graph. */
export type ClaimRecord = Linked<"claims">;
/** An argument in the graph. */
export type ArgumentRecord = Linked<"arguments">;
/** A measurement in the graph. */
export type MeasurementRecord = Linked<"measurements">;
/** An observation in the graph. */
export type ObservationRecord = Linked<"observations">;
/** A derivation in the graph. */
export type DerivationRecord = Linked<"derivations">;
/** A position in the graph. */
export type PositionRecord = Linked<"positions">;
/** An artefact in the graph. */
export type ArtefactRecord = Linked<"artefacts">;

/** Where a record was said: its sources through passages, the source it was really read in, and whose it is. */
export interface Provenance {
  readonly sources: readonly Id[];
  readonly via: readonly Id[];
  readonly scholars: readonly Id[];
  /** Astronomical year since when it is in print; null for the corpus's own reasoning. */
  readonly year: number | null;
}

/** The dispute as one immutable graph: every reference in it leads somewhere. */
export interface Graph {
  readonly settings: Settings;
  readonly sources: ReadonlyMap<Id, Source>;
  readonly records: ReadonlyMap<Id, AnyLinked>;
  /** Records that were read and left out, since what they cannot do without is not there. */
  readonly leftOut: readonly AnyLinked[];
  /** Records that could not be read, as far as it is known where they stand. */
  readonly spoilt?: readonly Spoilt[];
  /** The records of a list, in the order of the corpus. */
  readonly list: <L extends ListName>(list: L) => readonly Linked<L>[];
  readonly provenance: (id: Id) => Provenance;
  /** The authors of a source, else its editors, as far as they are scholars of the corpus. */
  readonly authorsOf: (source: Id) => readonly Id[];
  readonly wholeOf: ReadonlyMap<Id, Id>;
  /** An artefact and all its parts, depth first in corpus order. */
  readonly withParts: (artefact: Id) => readonly Id[];
  /** One name for all spellings of a dimension. */
  readonly dimensionName: (written: string) => string;
  readonly dimensionKind: (name: string) => QuantityKind | null;
  /** What dimensions come to exactly by others. */
  readonly ties: readonly Tie[];
  readonly featureName: (written: string) => string;
  /** Claims that cannot be right together with a claim, both ways, by `incompatible-with` or a shared exclusive question. */
  readonly rivalsOf: (claim: Id) => readonly Id[];
  /** Plug-ins that came with the corpus, whether they may run or not. */
  readonly pluginFiles: readonly PluginFile[];
  /** The style in which the corpus cites. */
  readonly citationStyle: CitationStyle;
  /** The scholar's own prose, in the order of its files. */
  readonly prose: readonly Prose[];
  /** The companion corpora: their artefacts and sources are among those of this one. */
  readonly companions: readonly Companion[];
  readonly findings: readonly Finding[];
  /** The outcome of an examination that is taken as found; null for the record as it is. */
  readonly supposed: Supposed<Graph> | null;
}
