import type { Finding, Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Graph, Linked } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { namesakesOf } from "../../../link/origin/namesakes.ts";
import { authorship } from "../../../link/origin/people.ts";
import { plainText } from "../../../read/bibliography/csl.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { kindWords } from "../../../read/grammar/words.ts";
import { findingLines } from "../../pages/findings.ts";
import type { FindingLine } from "../../pages/findings.ts";
import { linkTo } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";
import type { ReferenceOf } from "../../pages/sheet.ts";
import type { Reported } from "../../report/report.ts";
import { citableUnder, shownFindings, shownUnder, withheldIn } from "../../withhold.ts";
import { languageTag } from "./capture/language.ts";
import { fileNameOf } from "./papers.ts";
import { printedPage } from "./printed.ts";
import { readIn, takenFrom } from "./records/resting.ts";
import { soughtBy } from "./sought.ts";

/** A source whose papers can be read beside what is taken from them. */
export interface PaperData {
  readonly key: Id;
  readonly title: Text;
  /** How it is cited in short. */
  readonly label: string;
  readonly reference: ReferenceOf;
  /** The language of the source (BCP 47). */
  readonly language: string | null;
  /** Its pages as the bibliography has them: `211–230`. */
  readonly pages: string | null;
  /** The key and those of other sources with which the name of a paper may begin that begins with its own. */
  readonly keys: readonly Id[];
  readonly authors: readonly Author[];
  readonly passages: readonly PassageLine[];
}

/** An author of the source, else its editor; `id` where the corpus has them among its scholars. */
export interface Author {
  readonly id: Id | null;
  readonly name: Text;
}

/** A passage that was taken from the paper. */
export interface PassageLine {
  readonly id: Id;
  readonly at: string;
  /** The page of the file, from 0, and the file, as far as its selector tells. */
  readonly page: number | null;
  readonly file: string | null;
  /** As the record has it, for `foundIn`. */
  readonly selector: unknown;
  readonly quote: string | null;
  readonly lang: string | null;
  readonly translation: string | null;
  readonly paraphrase: string | null;
  /** The source whose words it has where they were read in this one; null for the source itself. */
  readonly of: Piece | null;
  readonly above: readonly Resting[];
  readonly findings: readonly FindingLine[];
}

/** A record that rests on a passage. */
export interface Resting {
  readonly id: Id;
  readonly list: ListName;
  readonly kind: Said;
  readonly text: Text;
  readonly standing: Standing | null;
}

/** What a page of papers is made from. */
interface Read {
  readonly model: Reported;
  readonly findings: readonly Finding[];
  readonly texts: ReadonlyMap<string, string>;
}

/** The page of a source's papers; null where there is no such source, or it is withheld. */
export function paperPage(read: Read, key: Id): PaperData | null {
  const { graph } = read.model;
  const source = graph.sources.get(key);
  const withheld = withheldIn(graph);
  if (!source || withheld(key)) return null;
  const { csl, label } = source;
  const items = namesakesOf(graph, key).map((one) => one.csl);
  const name = fileNameOf(key);
  return {
    key,
    title: csl.title === undefined ? labelText(graph, key) : plainText(csl.title),
    label: plainText(label),
    reference: { key, style: graph.citationStyle, language: graph.settings.language, items },
    language: languageTag(csl.language),
    pages: csl.page ?? null,
    keys: [...graph.sources.keys()].filter((one) => fileNameOf(one).startsWith(name)),
    authors: authorsOf(graph, key),
    passages: passagesOf(read, key),
  };
}

function authorsOf(graph: Graph, key: Id): readonly Author[] {
  const source = graph.sources.get(key);
  if (!source) return [];
  const withheld = withheldIn(graph);
  const { scholars, unlisted } = authorship(graph.list("scholars"))(source);
  return [
    ...scholars.filter((id) => !withheld(id)).map((id) => ({ id, name: labelText(graph, id) })),
    ...unlisted.map((name) => ({ id: null, name })),
  ];
}

/** Passages in the order in which they stand in the paper. */
function passagesOf(read: Read, key: Id): readonly PassageLine[] {
  const { graph } = read.model;
  const shown = shownUnder(read.model);
  return graph
    .list("passages")
    .filter(({ id }) => shown(id) && readIn(graph, id).includes(key))
    .map((record) => lineOf(read, key, record))
    .toSorted(
      (a, b) =>
        byText(a.file ?? "", b.file ?? "") ||
        (a.page ?? 0) - (b.page ?? 0) ||
        (printedPage(a.at) ?? 0) - (printedPage(b.at) ?? 0),
    );
}

function lineOf(read: Read, key: Id, { id, values }: Linked<"passages">): PassageLine {
  const { model, findings, texts } = read;
  const { graph, judgement } = model;
  const shown = shownUnder(model);
  const resting = takenFrom(graph, id).filter((one) => shown(one.id));
  const ids = new Set(resting.map((one) => one.id));
  const sought = soughtBy(values.selector);
  const [of] = graph.provenance(id).sources.filter((one) => one !== key && citableUnder(model)(one));
  return {
    id,
    at: values.at,
    page: sought?.page ?? null,
    file: sought?.file ?? null,
    selector: values.selector ?? null,
    quote: values.quote ?? null,
    lang: values.lang ?? null,
    translation: values.translation ?? null,
    paraphrase: values.paraphrase ?? null,
    of: of === undefined ? null : linkTo(graph, of),
    above: resting.map((one) => ({
      id: one.id,
      list: one.list,
      kind: kindWords[one.list],
      text: labelText(graph, one.id),
      standing: judgement.standings.get(one.id) ?? null,
    })),
    findings: findingLines(
      graph,
      shownFindings(graph, findings).filter(
        ({ rule, about }) =>
          about.includes(id) || (rule === "unit-slip" && about.some((one) => ids.has(one))),
      ),
      texts,
    ),
  };
}
