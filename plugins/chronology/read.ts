import {
  fieldsOf,
  membersOf,
  textOf,
  yearText,
  type Computation,
  type Json,
  type Naming,
} from "../../src/plugin.ts";

/** An event as it is told, with the first and the last year in which it may be. */
export interface Told {
  readonly name: string;
  /** The name inside a sentence: `the making of the wall`, `“the pit was dug”`. */
  readonly words: string;
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
): { readonly names: readonly string[]; readonly dated: readonly Told[] } {
  const clash = membersOf(fieldsOf(data)["clash"]).map((one) => {
    const fields = fieldsOf(one);
    const dated = membersOf(fields["events"]).map((event) => toldOf(event, name));
    const record = name(textOf(fields["record"]));
    const history = dated[0]?.words ?? `the history of ${record}`;
    const words = { date: `the date of ${record}`, history, relation: `“${record}”` };
    return { dated, words: words[textOf(fields["kind"]) as keyof typeof words] };
  });
  return { names: [...new Set(clash.map((one) => one.words))], dated: clash.flatMap((one) => one.dated) };
}

/** What happened to an artefact is told with it. */
function toldOf(event: Json, name: Naming): Told {
  const fields = fieldsOf(event);
  const record = textOf(fields["record"]);
  const text = textOf(fields["text"]);
  const thing = record === "" ? "" : name(record);
  const of = thing === "" ? "" : ` (${thing})`;
  return {
    name: text === "" ? thing : `${text}${of}`,
    words: text === "" ? `the making of ${thing}` : `“${text}”${of}`,
    asked: fields["asked"] === true,
    first: yearOf(fields["first"]),
    last: yearOf(fields["last"]),
  };
}

/** `480 BC to AD 79`, `AD 79 or earlier`, `AD 79`; that it cannot be told where both ends are open. */
export function spanWords(first: number | null, last: number | null): string {
  if (first === null && last === null) return "at a time that cannot be told";
  if (first === null) return `in ${yearText(last ?? 0)} or earlier`;
  if (last === null) return `in ${yearText(first)} or later`;
  return first === last ? `in ${yearText(first)}` : `between ${yearText(first)} and ${yearText(last)}`;
}

/** Names in a row: `a, b and c`; of many the first few and how many more. */
export function inWords(names: readonly string[], most = 4): string {
  const shown =
    names.length > most ? [...names.slice(0, most - 1), `${names.length - most + 1} more`] : names;
  return shown.length <= 1 ? (shown[0] ?? "") : `${shown.slice(0, -1).join(", ")} and ${shown.at(-1) ?? ""}`;
}

function yearOf(year: Json | undefined): number | null {
  return typeof year === "number" ? year : null;
}
