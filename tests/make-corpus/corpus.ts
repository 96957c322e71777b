import type { SourceFile } from "../../src/read/source-file.ts";
import { chanceFrom } from "./chance.ts";
import { writeDispute } from "./dispute.ts";
import type { Claim } from "./dispute.ts";
import type { Matter, Site } from "./ground.ts";
import { literature } from "./print/literature.ts";
import { scholarsOf } from "./print/people.ts";
import type { Scholar } from "./print/people.ts";
import { emptySheets } from "./records.ts";
import { portion, sharesOf } from "./shares.ts";
import type { Shares, Size } from "./shares.ts";
import { places, sites } from "./words.ts";

export { sizeFor } from "./shares.ts";
export type { Size } from "./shares.ts";

/** A corpus of invented content: the same size and seed give the same bytes on every machine. */
export function corpusOf(size: Size): readonly SourceFile[] {
  const shares = sharesOf(size);
  const chance = chanceFrom(size.seed);
  const sheets = emptySheets();
  const scholars = scholarsOf(shares.scholars, chance, sheets);
  const books = literature(chance);
  let before: readonly Claim[] = [];
  let unitFrom = "";
  for (let place = 0; place < shares.disputes; place++) {
    const site = siteAt(place, shares);
    const people = partiesOf(scholars, place);
    const sources = books.print(site.name, people, portion(shares.sources, place, shares.disputes));
    if (place === 0) unitFrom = sources[0]?.key ?? "";
    const matter: Matter = { place, site, sources, shares, chance, sheets };
    before = writeDispute(matter, before);
  }
  for (let n = 0; n < shares.searches; n++) {
    sheets.add("searches.yaml", "searches", {
      id: `search-${n + 1}`,
      where: `catalogue ${n + 1} of the county libraries`,
      words: "ring OR kiln OR weir",
      when: "2024-02-03",
      found: 61 + n,
      screened: 61 + n,
      kept: 12,
      "left-out": [{ n: 49 + n, why: "walking guides" }],
    });
  }
  const first = siteAt(0, shares);
  sheets.add("talk.yaml", "talks", {
    id: "talk",
    title: "Fifteen minutes",
    steps: [{ show: { question: `what-was-${first.id}` }, text: "Nobody agrees." }],
  });
  return [
    { path: "bibliography.bib", text: books.bibliography() },
    { path: "corpus.yaml", text: settings(size, unitFrom, first.id) },
    ...sheets.files(size.files === undefined ? undefined : size.files - 2),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** About nine scholars to a dispute, neighbours in time, some of them in the dispute before and after too. */
function partiesOf(scholars: readonly Scholar[], place: number): readonly Scholar[] {
  const count = Math.min(scholars.length, 9);
  const begin = (place * 4) % Math.max(1, scholars.length - count + 1);
  return scholars.slice(begin, begin + count);
}

function siteAt(place: number, shares: Shares): Site {
  const kind = sites[place % sites.length] ?? sites[0];
  const at = places[(place * 3 + Math.floor(place / sites.length)) % places.length] ?? places[0];
  const round = Math.floor(place / (sites.length * places.length));
  // Some kinds and places meet twice before all have met once, hence the number.
  const number = place < places.length ? "" : ` ${Math.floor(place / places.length) + 1 + round}`;
  const id = `${at}-${kind.kind}${number}`.toLowerCase().replaceAll(" ", "-");
  const parts = portion(shares.artefacts, place, shares.disputes) - 1;
  const partOf = (n: number): string =>
    `${id}/${kind.part.replaceAll(" ", "-")}-${String(n + 1).padStart(2, "0")}`;
  return {
    id,
    name: `the ${kind.kind} at ${at}${number}`,
    kind,
    parts: Array.from({ length: parts }, (_, n) => partOf(n)),
    partName: (part) => `${kind.part} ${Number(part.slice(part.lastIndexOf("-") + 1))}`,
  };
}

function settings(size: Size, unitFrom: string, foundIn: string): string {
  return [
    "# Invented throughout, by tests/make-corpus; no place or person in it is real.",
    "format: 1",
    `title: An invented corpus of ${size.records} records`,
    "language: en",
    "authors: [{ name: nobody, role: invented }]",
    "licence: CC0-1.0",
    "bibliography: [bibliography.bib]",
    "units:",
    `  zenni-ell: { is: 0.552 ± 0.004 m, also: [ell of Zennibeck], from: ${unitFrom}, found-in: [${foundIn}] }`,
    "dimensions:",
    "  gap: { kind: length }",
    "  depth: { kind: length, also: [Tiefe, βάθος] }",
    "  diameter: { kind: length, also: [Durchmesser] }",
    "",
  ].join("\n");
}
