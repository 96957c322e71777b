import { inEnglish } from "../../../base/text/said/english.ts";
import type { Model } from "../../../build.ts";
import type { Linked } from "../../../link/graph.ts";
import type { Plugin } from "../../../plugin.ts";
import { addressIn, at, atAll, said } from "./entity.ts";
import type { Entity } from "./entity.ts";

/** How the runs of plug-ins are to be told. */
export interface RunsOf {
  readonly model: Model;
  readonly plugins: readonly Plugin[];
  /** The derivations that are given. */
  readonly derivations: readonly Linked<"derivations">[];
  readonly authors: readonly Entity[];
  /** The paths in the crate of the files that hold the records of a list. */
  readonly filesOf: (list: string) => readonly string[];
}

/** The plug-ins as software, and each run of one as an action (RO-Crate 1.2, “Software used to create files”). */
export function runsIn(of: RunsOf): readonly Entity[] {
  const { model, plugins, derivations } = of;
  const runs = derivations.flatMap((one) => {
    const { status } = model.derivations.byId.get(one.id) ?? { status: "pending" };
    return status === "pending" || status === "withheld" ? [] : [runOf(of, one)];
  });
  const used = plugins.filter(({ id }) => runs.some(({ instrument }) => isOf(instrument, id)));
  return [...used.map(softwareOf), ...runs];
}

const softwareId = (plugin: string): string => `#plugin-${plugin}`;

function isOf(instrument: unknown, plugin: string): boolean {
  return (instrument as { readonly "@id": string })["@id"] === softwareId(plugin);
}

function softwareOf({ id, version, title, doc, sources, guest }: Plugin): Entity {
  const description = inEnglish(doc);
  return said({
    "@id": softwareId(id),
    "@type": "SoftwareApplication",
    name: inEnglish(title),
    identifier: id,
    softwareVersion: version,
    description: description === "" ? undefined : description,
    citation: sources.length > 0 ? sources : undefined,
    isPartOf: guest === undefined ? at("#variorum") : undefined,
  });
}

function runOf({ model, authors, filesOf }: RunsOf, { id, values }: Linked<"derivations">): Entity {
  const derived = model.derivations.byId.get(id);
  const computed = derived?.status === "computed";
  const why = derived?.why ?? null;
  const lists = new Set((derived?.used ?? []).flatMap((one) => model.graph.records.get(one)?.list ?? []));
  return said({
    "@id": `#run-${id}`,
    "@type": "CreateAction",
    name: `Computation of ${id}`,
    description: values.text,
    instrument: at(softwareId(values.plugin)),
    object: atAll([...lists].toSorted().flatMap(filesOf).map(addressIn)),
    result: at("standings.json"),
    agent: atAll(authors),
    actionStatus: at(`http://schema.org/${computed ? "CompletedActionStatus" : "FailedActionStatus"}`),
    error: why === null ? undefined : inEnglish(why),
  });
}
