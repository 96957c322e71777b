import {
  count,
  fieldsOf,
  inEnglish,
  membersOf,
  row,
  say,
  textOf,
  yearWords,
  type Computation,
  type Json,
  type Naming,
  type Text,
} from "../../src/plugin.ts";

/** An event as it is told, with the first and the last year in which it may be. */
export interface Told {
  readonly name: Text;
  /** The name inside a sentence: `the making of the wall`, `“the pit was dug”`. */
  readonly words: Text;
  readonly asked: boolean;
  readonly first: number | null;
  readonly last: number | null;
}

/** The events of a computation by name. */
export function eventsIn({ data }: Computation, name: Naming): readonly Told[] {
  return membersOf(fieldsOf(data)["events"]).map((one) => toldOf(one, name));
}

/** What the statements that clash are called, each once, and the years that dates among them give by themselves. */
export function clashIn(
  { data }: Computation,
  name: Naming,
): { readonly names: readonly Text[]; readonly dated: readonly Told[] } {
  const clash = membersOf(fieldsOf(data)["clash"]).map((one) => {
    const fields = fieldsOf(one);
    const dated = membersOf(fields["events"]).map((event) => toldOf(event, name));
    const record = name(textOf(fields["record"]));
    return { dated, words: statementWords(textOf(fields["kind"]), record, dated[0]) };
  });
  const names = new Map(clash.map(({ words }) => [inEnglish(words), words]));
  return { names: [...names.values()], dated: clash.flatMap((one) => one.dated) };
}

function statementWords(kind: string, record: Text, entry: Told | undefined): Text {
  if (kind === "date") return say`the date of ${record}`;
  return kind === "relation" ? quoted(record) : (entry?.words ?? say`the history of ${record}`);
}

/** What happened to an artefact is told with it. */
function toldOf(event: Json, name: Naming): Told {
  const fields = fieldsOf(event);
  const record = textOf(fields["record"]);
  const text = textOf(fields["text"]);
  const thing = record === "" ? null : name(record);
  const known = thing ?? "";
  return {
    name: text === "" ? known : thing === null ? text : say`${text} (${thing})`,
    words:
      text === ""
        ? say`the making of ${known}`
        : thing === null
          ? quoted(text)
          : say`${quoted(text)} (${thing})`,
    asked: fields["asked"] === true,
    first: yearOf(fields["first"]),
    last: yearOf(fields["last"]),
  };
}

function quoted(text: Text): Text {
  return say`${{ mention: text, words: Number.MAX_SAFE_INTEGER, quoted: true }}`;
}

/** `in 480 BC`, `in AD 79 or earlier`, `between 480 BC and AD 79`; that it cannot be told where both ends are open. */
export function spanWords(first: number | null, last: number | null): Text {
  if (last === null)
    return first === null ? say`at a time that cannot be told` : say`in ${yearWords(first)} or later`;
  if (first === null) return say`in ${yearWords(last)} or earlier`;
  return first === last
    ? say`in ${yearWords(first)}`
    : say`between ${yearWords(first)} and ${yearWords(last)}`;
}

/** Names in a row: `a, b and c`; of many the first few and how many more. */
export function inWords(names: readonly Text[], most = 4): Text {
  if (names.length <= most) return say`${row(names)}`;
  return say`${row(names.slice(0, most - 1), "comma")} and ${count(names.length - most + 1)} more`;
}

function yearOf(year: Json | undefined): number | null {
  return typeof year === "number" ? year : null;
}
