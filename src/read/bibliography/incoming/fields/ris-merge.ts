import type { Arrived, Entry } from "../arrived.ts";
import { extentIn } from "../arrived.ts";
import type { Held } from "../shelf.ts";
import type { Field, MergeField } from "./field.ts";
import { risHand } from "./ris.ts";

/** Tags of one meaning in older and newer files. */
const names: ReadonlyMap<string, string> = new Map([
  ["A1", "AU"],
  ["T1", "TI"],
  ["Y1", "PY"],
  ["N2", "AB"],
]);

/** The tags of RIS that the corpus's record lacks or that differ; a tag that stands several times is one field. */
export function risFields({ source, holding }: Held, arrived: Arrived, entry: Entry): readonly MergeField[] {
  const { start, end } = extentIn(holding.text, "ris", source.span);
  const has = groups(risHand.fields(holding.text, start, end));
  const found: MergeField[] = [];
  for (const [name, lines] of groups(risHand.fields(arrived.file.text, entry.start, entry.end))) {
    const theirs = textOf(lines);
    if (name === "ID" || theirs === "") continue;
    const here = has.get(name);
    if (!here) {
      const write = lines.map((one) => ({ name: one.name, text: said(one) }));
      found.push({ name, here: null, theirs, write, drop: [] });
    } else if (plain(textOf(here)) !== plain(theirs) && !sameDate(name, source, entry)) {
      const tag = here[0]?.name ?? name;
      const write = lines.map((one) => ({ name: tag, text: said(one) }));
      found.push({ name: tag, here: textOf(here), theirs, write, drop: [tag] });
    }
  }
  return found;
}

function sameDate(name: string, source: Held["source"], entry: Entry): boolean {
  return name === "PY" && JSON.stringify(source.csl.issued) === JSON.stringify(entry.source.csl.issued);
}

const said = (field: Field): string => field.text.replace(/\s+/g, " ").trim();

function plain(text: string): string {
  return text.normalize("NFC").replace(/[–—]/g, "-");
}

function groups(fields: readonly Field[]): ReadonlyMap<string, readonly Field[]> {
  const found = new Map<string, Field[]>();
  for (const field of fields) {
    const name = names.get(field.name) ?? field.name;
    const list = found.get(name);
    if (list) list.push(field);
    else found.set(name, [field]);
  }
  return found;
}

function textOf(fields: readonly Field[]): string {
  return fields
    .map(said)
    .filter((one) => one !== "")
    .join("; ");
}
