import { basename } from "node:path";
import { nearest } from "../../base/nearest.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { SourceFile } from "../../build.ts";
import type { Graph } from "../../link/graph.ts";
import { textsOf } from "../../read/source-file.ts";
import { likelyList } from "../../show/desk/grid/columns/matched.ts";
import { fieldsOf, meaningFrom } from "../../show/desk/grid/columns/meaning.ts";
import type { Meaning, TableList } from "../../show/desk/grid/columns/meaning.ts";
import { comingTable } from "../../show/desk/import/table/coming.ts";
import { tableTold } from "../../show/desk/import/table/told/told.ts";
import type { TableTold } from "../../show/desk/import/table/told/told.ts";
import { Stop } from "../fault.ts";
import { goalOf, written } from "./importing.ts";
import type { Importing } from "./importing.ts";

/** Brings a table of measurements or artefacts into a corpus, and tells what became of each row. */
export function tableImported(file: SourceFile, options: Importing): TableTold {
  const { folder, graph, files } = goalOf(options.into);
  const coming = comingTable(file);
  const list = options.as === "artefacts" || options.as === "measurements" ? options.as : null;
  const told = tableTold(
    graph,
    coming,
    {
      list,
      meanings: meaningsFrom(
        graph,
        options.columns ?? [],
        coming.head,
        list ?? likelyList(graph, coming.head),
      ),
      decimal: options.decimal === "comma" ? "comma" : "point",
      all: fieldsFrom(options.all ?? [], list ?? likelyList(graph, coming.head)),
      as: options.keep === "table" ? "table" : "records",
      choices: new Map(),
      duplicates: options.merge === "missing" ? "merge" : "leave",
    },
    textsOf(files),
  );
  if (told.problem !== null) throw new Stop(inEnglish(told.problem));
  written(folder, `Table brought in from ${basename(file.path)}`, told.changes);
  return told;
}

/** `HEAD=MEANING`, several parted by commas; a head may have commas in it. */
function meaningsFrom(
  graph: Graph,
  options: readonly string[],
  head: readonly string[],
  list: TableList,
): ReadonlyMap<number, Meaning> {
  const meanings = new Map<number, Meaning>();
  for (const option of options.flatMap(pairsIn)) {
    const { name, value } = parted(option, "--columns", "Inv. no.=of");
    const places = head.flatMap((one, place) => (one === name && !meanings.has(place) ? [place] : []));
    const [place] = places;
    if (place === undefined) {
      const near = nearest(name, head);
      throw new Stop(`Unknown column \`${name}\`, expected ${orList(near.length > 0 ? near : head)}`);
    }
    const meaning = meaningFrom(graph, value, list);
    if (!meaning) {
      const near = nearest(value, fieldsOf(list));
      throw new Stop(
        `Unknown field \`${value}\`, expected ${orList(near.length > 0 ? near : fieldsOf(list))}`,
      );
    }
    meanings.set(place, meaning);
  }
  return meanings;
}

/** Pieces at commas, put together again until each has a name and a value. */
function pairsIn(option: string): readonly string[] {
  const pairs: string[] = [];
  let open = "";
  for (const piece of option.split(",")) {
    open = open === "" ? piece : `${open},${piece}`;
    if (!open.includes("=")) continue;
    pairs.push(open.trim());
    open = "";
  }
  return open.trim() === "" ? pairs : [...pairs, open.trim()];
}

function fieldsFrom(options: readonly string[], list: TableList): Readonly<Record<string, string>> {
  return Object.fromEntries(
    options.map((option) => {
      const { name, value } = parted(option, "--all", "from=KEY");
      if (fieldsOf(list).includes(name)) return [name, value];
      const near = nearest(name, fieldsOf(list));
      throw new Stop(
        `Unknown field \`${name}\`, expected ${orList(near.length > 0 ? near : fieldsOf(list))}`,
      );
    }),
  );
}

function parted(
  option: string,
  name: string,
  example: string,
): { readonly name: string; readonly value: string } {
  const at = option.lastIndexOf("=");
  const [before, behind] = [option.slice(0, at).trim(), option.slice(at + 1).trim()];
  if (at > 0 && before !== "" && behind !== "") return { name: before, value: behind };
  throw new Stop(`Unexpected \`${option}\` in ${name}, expected a name and what it is, such as ${example}`);
}

function orList(all: readonly string[]): string {
  return all.map((one) => `\`${one}\``).join(" or ");
}
