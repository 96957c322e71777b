import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { FAILSAFE_SCHEMA, load } from "js-yaml";
import * as z from "zod";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { keptReading } from "../../src/host/reading/kept.ts";
import type { Field, Fields } from "../../src/read/grammar/field.ts";
import { everywhere, kindOf, listNames } from "../../src/read/grammar/kinds.ts";
import { readCorpus } from "../../src/read/read.ts";

/** What a process of its own does once: reads a corpus as it is, as it is kept or once more, keeps it, or reads it as the peer does. */
const ways: Readonly<Record<string, (folder: string) => () => unknown>> = {
  cold: (folder) => () => recordsIn(readCorpus(readCorpusFolder(folder), new Map())),
  kept: (folder) => () => {
    const kept = keptReading(folder);
    return recordsIn(readCorpus(kept.files(), kept.memo));
  },
  again: (folder) => {
    const kept = keptReading(folder);
    readCorpus(kept.files(), kept.memo);
    return () => recordsIn(readCorpus(kept.files(), kept.memo));
  },
  keep: (folder) => () => {
    // The files of a bench were just written; ten minutes later they can be known again.
    const kept = keptReading(folder, { now: () => Date.now() + 600_000, least: 0 });
    readCorpus(kept.files(), kept.memo);
    kept.keep();
  },
  peer: (folder) => {
    const schema = fileSchema();
    return () => peer(folder, schema);
  },
};

function recordsIn(read: ReturnType<typeof readCorpus>): number {
  return "records" in read ? read.records.length : 0;
}

/** The peer: synchronous reading, js-yaml, zod with the grammar's shapes; no places, and no meaning of quantities or dates. */
function peer(folder: string, schema: z.ZodType): number {
  let good = 0;
  for (const one of readdirSync(folder, { withFileTypes: true, recursive: true })) {
    if (!one.isFile() || !one.name.endsWith(".yaml") || one.name === "corpus.yaml") continue;
    const text = readFileSync(join(one.parentPath, one.name), "utf8");
    if (schema.safeParse(load(text, { schema: FAILSAFE_SCHEMA })).success) good++;
  }
  return good;
}

function fileSchema(): z.ZodType {
  const lists = listNames.map((list) => {
    // A file's own source stands for the one that its records do not name.
    const fields = Object.entries({ ...kindOf(list).fields, ...everywhere } as Fields).map(
      ([name, field]) => [name, shapeOf(field, name === "from")] as const,
    );
    return [list, z.array(z.looseObject(Object.fromEntries(fields))).optional()] as const;
  });
  return z.looseObject({ source: z.string().optional(), ...Object.fromEntries(lists) });
}

function shapeOf(field: Field, free = false): z.ZodType {
  const shape = typeOf(field);
  return field.required && !free ? shape : shape.optional();
}

function typeOf(field: Field): z.ZodType {
  const many = (one: z.ZodType): z.ZodType => z.union([z.array(one), one]);
  const map = (fields: Fields): z.ZodType =>
    z.looseObject(Object.fromEntries(Object.entries(fields).map(([name, one]) => [name, shapeOf(one)])));
  switch (field.type) {
    case "id":
      return z.string().regex(/^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/);
    case "flag":
      return z.enum(["true", "false"]);
    case "choice":
      return z.enum(field.of);
    case "texts":
    case "refs":
    case "citations":
    case "quantities":
      return many(z.string());
    case "textMap":
    case "numberMap":
      return z.record(z.string(), z.string());
    case "probability":
      return z.union([z.string(), z.record(z.string(), z.string())]);
    case "json":
      return z.unknown();
    case "group":
      return map(field.fields);
    case "items":
      return many(field.short ? z.union([z.string(), map(field.fields)]) : map(field.fields));
    case "named":
      return z.record(z.string(), map(field.fields));
    default:
      return z.string();
  }
}

const [way = "", folder = ""] = process.argv.slice(2);
const work = ways[way]?.(folder);
if (!work) throw new Error(`Unknown way \`${way}\`, expected one of ${Object.keys(ways).join(", ")}`);
const before = process.cpuUsage();
const count = work();
const { user, system } = process.cpuUsage(before);
process.stdout.write(JSON.stringify({ count, ms: (user + system) / 1000 }));
