import { collector } from "../../../decode/collector.ts";
import { readBibtex } from "../../bibtex/bibtex.ts";
import { inheritance } from "../../bibtex/inherit.ts";
import type { Fields } from "../../bibtex/inherit.ts";
import type { BibEntry } from "../../bibtex/lexer.ts";
import { usedFields } from "../../bibtex/names.ts";
import { saidBy } from "../alike/alike.ts";
import type { Entry } from "../arrived.ts";
import type { MergeField } from "./field.ts";
import type { Held, Holding } from "../shelf.ts";

/** Names of one field in BibTeX and biblatex (biblatex manual, 2.2.5 and 2.2.2 on dates). */
const names: ReadonlyMap<string, string> = new Map(
  (
    "journal=journaltitle address=location school=institution annote=annotation archiveprefix=eprinttype " +
    "primaryclass=eprintclass pdf=file year=date month=date day=date"
  )
    .split(" ")
    .map((pair): [string, string] => {
      const [name = "", other = ""] = pair.split("=");
      return [name, other];
    }),
);

/** Fields about the entry in its own file, which say nothing of the work. */
const own: ReadonlySet<string> = new Set(
  (
    "crossref xref xdata ids entryset entrysubtype execute options presort sortkey sorttitle sortname sortyear label " +
    "shorthand related relatedtype relatedoptions relatedstring"
  ).split(" "),
);

const called = (name: string): string => names.get(name) ?? name;

/** The fields of BibTeX that the corpus's entry lacks or that differ; what it has from its parents it does not lack. */
export function bibFields({ source, holding }: Held, entry: Entry): readonly MergeField[] {
  const { at, inherit } = lexedIn(holding);
  const there = at.get(source.span.start);
  if (!there || !entry.bib) return [];
  const has = groups([...inherit(there).values()]);
  const ownNames = new Set(there.fields.map((one) => one.name));
  const found: MergeField[] = [];
  for (const [name, fields] of groups(entry.bib.fields)) {
    if (own.has(name)) continue;
    const shown = textOf(fields);
    const here = has.get(name);
    if (shown === "") continue;
    if (!here) {
      const write = fields.map((one) => ({ name: one.name, text: one.text }));
      found.push({ name: fields[0]?.name ?? name, here: null, theirs: shown, write, drop: [] });
    } else if (!saySame(there.type, here, fields)) {
      const [only] = fields;
      const alone = fields.length === 1 && here.length === 1 && name !== "date" && only;
      const write = alone
        ? [{ name: here[0]?.name ?? only.name, text: only.text }]
        : fields.map((one) => ({ name: one.name, text: one.text }));
      const drop = here.map((one) => one.name).filter((one) => ownNames.has(one));
      found.push({ name: here[0]?.name ?? name, here: textOf(here), theirs: shown, write, drop });
    }
  }
  return found;
}

type Said = { readonly name: string; readonly text: string };

/** Fields by the one name of each, the first of every name as it was typed. */
function groups(fields: readonly Said[]): ReadonlyMap<string, readonly Said[]> {
  const found = new Map<string, Said[]>();
  for (const field of fields) {
    const list = found.get(called(field.name)) ?? [];
    found.set(called(field.name), list);
    if (!list.some((one) => one.name === field.name)) list.push(field);
  }
  return found;
}

function textOf(fields: readonly Said[]): string {
  const texts = fields.map((one) => one.text.replace(/\s+/g, " ").trim()).filter((one) => one !== "");
  return texts.join(" / ");
}

/** Whether fields are read alike: as they stand without braces, else through the reader, which knows TeX. */
function saySame(type: string, a: readonly Said[], b: readonly Said[]): boolean {
  const plain = (fields: readonly Said[]): string =>
    textOf(fields)
      .replace(/[{}]/g, "")
      .replace(/-{2,3}|[–—]/g, "-");
  if (plain(a) === plain(b)) return true;
  if (![...a, ...b].every((one) => usedFields.has(one.name) || called(one.name) === "date")) return false;
  return readAlone(type, a) === readAlone(type, b);
}

function readAlone(type: string, fields: readonly Said[]): string {
  const text = `@${type}{x,${fields.map(({ name, text: said }) => `${name} = {${said}}`).join(",")}}`;
  const [source] = readBibtex({ path: "", text }).sources;
  return source ? saidBy(source).normalize("NFC") : text;
}

interface Lexed {
  readonly at: ReadonlyMap<number, BibEntry>;
  readonly inherit: (entry: BibEntry) => Fields;
}

const known = new WeakMap<Holding, Lexed>();

/** The entries of a bibliography by where they begin, and the fields that each has with those of its parents. */
function lexedIn(holding: Holding): Lexed {
  const lexed = known.get(holding) ?? {
    at: new Map(holding.lexed.map((one) => [one.span.start, one])),
    inherit: inheritance(holding.lexed, collector()),
  };
  known.set(holding, lexed);
  return lexed;
}
