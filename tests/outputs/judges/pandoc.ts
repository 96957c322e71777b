import { membersOf as listIn } from "../../../src/base/json.ts";
import type { Json } from "../../../src/base/json.ts";
import { printedBy } from "./judged.ts";

/** What pandoc finds in a text, as plain words. */
export interface Found {
  readonly headings: readonly { readonly level: number; readonly words: string }[];
  readonly tables: readonly (readonly (readonly string[])[])[];
  readonly alts: readonly string[];
  readonly notes: readonly string[];
  /** All words but those of notes. */
  readonly words: string;
}

interface Element {
  readonly t: string;
  readonly c?: Json;
}

const isElement = (one: Json): one is Element & { readonly [name: string]: Json } =>
  typeof one === "object" &&
  one !== null &&
  !Array.isArray(one) &&
  "t" in one &&
  typeof one["t"] === "string";

/** Every element of pandoc's tree in its order, those within others after them. */
function* elements(tree: Json): Generator<Element> {
  if (isElement(tree)) yield tree;
  if (Array.isArray(tree)) for (const one of tree) yield* elements(one);
  else if (typeof tree === "object" && tree !== null)
    for (const one of Object.values(tree)) yield* elements(one);
}

/** The words of a part of pandoc's tree, without its notes and quotation marks. */
export function wordsOf(tree: Json): string {
  if (Array.isArray(tree)) return tree.map(wordsOf).join("");
  if (!isElement(tree)) return "";
  const { t, c } = tree;
  if (t === "Str") return String(c);
  if (t === "Code" || t === "Math") return String(listIn(c)[1]);
  if (t === "Note" || t === "RawInline" || t === "RawBlock") return "";
  return c === undefined ? " " : wordsOf(c);
}

/** Rows of a table, its head first: `[attr, caption, columns, head, bodies, foot]` (pandoc-types 1.22). */
function rowsOf(table: Json): readonly (readonly string[])[] {
  const [, , , head, bodies] = listIn(table);
  const rows = [
    ...listIn(listIn(head)[1]),
    ...listIn(bodies).flatMap((body) => [...listIn(listIn(body)[2]), ...listIn(listIn(body)[3])]),
  ];
  return rows.map((row) => listIn(listIn(row)[1]).map((cell) => wordsOf(listIn(cell)[4] ?? null)));
}

/** Reads a file by pandoc, in the format that its ending tells. */
export function readByPandoc(path: string): Found {
  const { blocks } = JSON.parse(printedBy("pandoc", ["-t", "json", path])) as { readonly blocks: Json };
  const all = [...elements(blocks)];
  const of = (type: string): readonly Json[] => all.flatMap(({ t, c }) => (t === type ? [c ?? null] : []));
  return {
    headings: of("Header").map((one) => ({
      level: Number(listIn(one)[0]),
      words: wordsOf(listIn(one)[2] ?? null),
    })),
    tables: of("Table").map(rowsOf),
    alts: of("Image").map((one) => wordsOf(listIn(one)[1] ?? null)),
    notes: of("Note").map(wordsOf),
    words: wordsOf(blocks),
  };
}
