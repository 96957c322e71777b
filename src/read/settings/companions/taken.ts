import type { Finding, Id, Span } from "../../../base/finding.ts";
import type { Source } from "../../bibliography/read.ts";
import { everywhere, kindOf } from "../../grammar/kinds.ts";
import { placed } from "../../record.ts";
import type { AnyRecord, FileRecords, Saying, Spoilt } from "../../record.ts";
import type { MapNode } from "../../yaml/tree.ts";
import { nodeNamed, valuesNamed } from "./names.ts";
import type { Naming } from "./names.ts";
import { isOfUse } from "../use.ts";
import type { Use } from "../use.ts";

/** What the files of another corpus say, its records of all kinds. */
export interface Said {
  readonly records: readonly FileRecords[];
  readonly bibliographies: readonly {
    readonly sources: readonly Source[];
    readonly findings: readonly Finding[];
  }[];
}

/** What is taken from it, under the names that it has here. */
export interface Taken {
  readonly sources: readonly Source[];
  readonly records: readonly AnyRecord[];
  readonly spoilt: readonly Spoilt[];
  /** Errors that cost something which would be taken. */
  readonly findings: readonly Finding[];
}

/**
 * The artefacts and the bibliography of another corpus, called `AS/…`; what they name that is not taken is left out.
 * `beyond` tells whether that is in a corpus which the other one uses, as `theirs`.
 */
export function takenAs(
  as: string,
  theirs: readonly Use[],
  said: Said,
): Taken & { readonly beyond: boolean } {
  const artefacts = said.records.flatMap(({ records }) => records).filter(({ list }) => list === "artefacts");
  const spoilt = said.records.flatMap((one) => one.spoilt).filter(isArtefact);
  const sources = said.bibliographies.flatMap((one) => one.sources);
  let beyond = false;
  const naming = namingOf(
    as,
    (id) => (beyond ||= isOfUse(theirs, id)),
    [...artefacts, ...spoilt],
    spoilt.filter(({ written }) => written === undefined),
    sources,
  );
  const taken: Taken = {
    sources: sources.map((one) => sourceNamed(one, naming)),
    records: artefacts.map((one) => recordNamed(one, naming)),
    spoilt: spoilt.map((one) => spoiltNamed(one, naming)),
    findings: [
      ...said.bibliographies.flatMap((one) => one.findings.filter(isError)),
      ...said.records.flatMap(errorsOfArtefacts),
    ].map((one) => ({ ...one, about: one.about.map(naming.own), fix: null })),
  };
  return { ...taken, beyond };
}

const isArtefact = ({ written }: Spoilt): boolean => written === undefined || written.list === "artefacts";

function namingOf(
  as: string,
  left: (id: Id) => void,
  things: readonly { readonly id: Id | null }[],
  unknown: readonly Spoilt[],
  sources: readonly Source[],
): Naming {
  const ids = new Set(things.map(({ id }) => id));
  // What an unreadable file seems to hold may be either.
  const keys = new Set([...sources.map(({ key }) => key), ...unknown.map(({ id }) => id)]);
  const own = (id: Id): Id => (id === "" ? id : `${as}/${id}`);
  const there = { artefacts: ids, sources: keys } as const;
  return {
    own,
    of: (id, to) => {
      if (to.some((kind) => (kind === "artefacts" || kind === "sources") && there[kind].has(id)))
        return own(id);
      left(id);
      return null;
    },
  };
}

const fields = { ...kindOf("artefacts").fields, ...everywhere };

function recordNamed(record: AnyRecord, naming: Naming): AnyRecord {
  const { list, id, named, values, file } = record;
  const here = {
    list,
    named,
    id: id === null ? id : naming.own(id),
    values: valuesNamed(values, fields, naming),
    file,
  } as unknown as Saying;
  let node: MapNode | null = null;
  return placed(here, (there: AnyRecord) => (node ??= nodeNamed(there.node, fields, naming)), record);
}

function spoiltNamed(spoilt: Spoilt, naming: Naming): Spoilt {
  const { id, written } = spoilt;
  const here = written && { ...written, node: nodeNamed(written.node, fields, naming) };
  return { ...spoilt, id: naming.own(id), ...(here ? { written: here } : {}) };
}

function sourceNamed(source: Source, naming: Naming): Source {
  const key = naming.own(source.key);
  const members = source.members.flatMap((member) => naming.of(member, ["sources"]) ?? []);
  return { ...source, key, csl: { ...source.csl, id: key }, members };
}

const ofWholeFile: ReadonlySet<string> = new Set(["unreadable-file", "conflict-marks"]);
const isError = ({ level }: Finding): boolean => level === "error";

/** Errors that cost an artefact or a field of one, or a whole file in which some may stand. */
function errorsOfArtefacts({ records, spoilt, findings }: FileRecords): readonly Finding[] {
  const errors = findings.filter(isError);
  if (errors.length === 0) return errors;
  const written = spoilt.filter(isArtefact).flatMap((one) => one.written ?? []);
  const places = [...records.filter(({ list }) => list === "artefacts"), ...written].map(({ node }) => node);
  const within = (at: Span): boolean =>
    places.some(({ start, end }) => start <= at.start && at.start < Math.max(end, start + 1));
  return errors.filter(({ rule, at }) => ofWholeFile.has(rule) || (at !== null && within(at)));
}
