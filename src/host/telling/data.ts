import { inEnglish } from "../../base/text/said/english.ts";
import { coded, say } from "../../base/text/said/said.ts";
import { withholdingSaid } from "../../show/telling/withholding.ts";
import { cslJsonOf } from "../../write/data/formats/csl-json.ts";
import { graphMlOf } from "../../write/data/formats/graphml.ts";
import { jsonLdOf } from "../../write/data/formats/json-ld.ts";
import { turtleOf } from "../../write/data/formats/turtle.ts";
import { openData } from "../../write/data/open-data.ts";
import type { Triple } from "../../write/data/open-data.ts";
import { ownTerms } from "../../write/data/terms/own-terms.ts";
import { withoutNotes } from "../../show/telling/given/open.ts";
import { crateFiles } from "./files/crate-files.ts";
import type { Asked, Kind, Refusal, Told } from "./kind.ts";

/** What every part of the data is made from. */
interface Written {
  readonly told: Told;
  readonly base: string;
  readonly triples: readonly Triple[];
}

/** A file of the data. */
interface Part {
  readonly path: string;
  readonly content: (written: Written) => string;
}

/** Files that go together as the data of a corpus, in the order in which they are made. */
const parts: readonly Part[] = [
  { path: "data.ttl", content: ({ told, base, triples }) => turtleOf(triples, base, headOf(told)) },
  { path: "data.jsonld", content: ({ base, triples }) => jsonLdOf(triples, base) },
  { path: "terms.ttl", content: () => turtleOf(ownTerms(), null, [termsHead]) },
  { path: "sources.json", content: ({ told }) => cslJsonOf(told.model) },
  { path: "dispute.graphml", content: ({ told }) => graphMlOf(told.model) },
];

const termsHead = "The terms that data.ttl uses and no published vocabulary has.";

/**
 * The corpus as open data: in Turtle and JSON-LD after CIDOC CRM, its sources in CSL-JSON, the dispute as GraphML; as a folder also
 * the corpus as it may be given out, tables, and a description of it all as a crate.
 */
export const data: Kind = {
  doc: "open data: Turtle and JSON-LD after CIDOC CRM, GraphML; as a folder also the corpus as it may be given out (RO-Crate)",
  formats: ["zip", "ttl", "jsonld", "graphml"],
  several: true,
  options: [
    {
      name: "base",
      takes: "address",
      doc: "what the addresses of the records begin with; left out, one in a domain for examples",
    },
    { name: "with-notes", takes: null, doc: "the notes of records too, which are left out otherwise" },
  ],
  reach: {},
  make: async (told, format, name, asked) => {
    // Whoever takes data over takes it for what was recorded.
    if (told.model.lens.suppose)
      return { refused: say`Unexpected supposed outcome, expected data of what was recorded` };
    const base = baseOf(told, asked);
    if (typeof base !== "string") return base;
    const versions = new Map(told.plugins.map(({ id, version }) => [id, version]));
    const withNotes = asked["with-notes"] === true;
    const model = withNotes ? told.model : { ...told.model, graph: withoutNotes(told.model.graph) };
    const triples = openData(model, { base, program: "Variorum", versions, today: told.today });
    const written = { told, base, triples };
    const only = parts.find(({ path }) => path.endsWith(`.${format}`));
    if (only) return [{ path: `${name}.${format}`, content: only.content(written) }];
    const files = parts.map(({ path, content }) => ({ path, content: content(written) }));
    return crateFiles(told, files, withNotes);
  },
};

/** The address that was asked for; else one from the corpus's title, in a domain that is kept for examples (RFC 2606). */
function baseOf({ model }: Told, asked: Asked): string | Refusal {
  const given = asked["base"];
  if (typeof given !== "string") {
    const words =
      model.graph.settings.title
        .normalize("NFD")
        .toLowerCase()
        .match(/[a-z0-9]+/g) ?? [];
    return `https://example.org/variorum/${words.join("-").slice(0, 60) || "corpus"}/`;
  }
  if (/^https?:\/\/[^\s<>"{}|\\^`#?]+\/$/.test(given)) return given;
  return {
    refused: say`Unexpected base \`${given}\`, expected an address that ends in a slash: ${coded("https://…/")}`,
  };
}

function headOf({ model }: Told): readonly string[] {
  return [
    model.graph.settings.title,
    "CIDOC CRM 7.1.3, CRMsci 3.2, CRMinf 1.2.1. Claims stand here as propositions that scholars hold or reject, never as facts; standings",
    "(vr:standing) are what the program works out that follows from the record, and nobody's opinion. Terms in vr: are declared in terms.ttl.",
    ...withholdingSaid(model.graph).map(inEnglish),
  ];
}
