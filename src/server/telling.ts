import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import * as z from "zod";
import { say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import type { Lens } from "../build.ts";
import { NoCorpus } from "../host/corpus-folder.ts";
import { keptReading } from "../host/reading/kept.ts";
import { zipOf } from "../host/telling/files/zip.ts";
import type { Kind } from "../host/telling/kind.ts";
import { kinds } from "../host/telling/kinds.ts";
import { atWork, todayHere, toldOf } from "../host/telling/told.ts";
import type { Tools } from "../host/telling/told.ts";
import { unknownSupposition } from "../link/suppose/under.ts";

const asking = z.object({
  kind: z.string(),
  format: z.string(),
  options: z.record(z.string(), z.union([z.string(), z.array(z.string()), z.boolean()])),
  asOf: z.number().int().nullable(),
  suppose: z.object({ examination: z.string(), outcome: z.string() }).nullable(),
});

type Asking = z.infer<typeof asking>;

/** The most bytes of what is asked. */
const largest = 100 * 1024;

/** What can be written, and in which formats. */
export interface Tellable {
  readonly name: string;
  readonly formats: readonly string[];
  readonly several: boolean;
  readonly options: readonly string[];
}

/** A file that was made, or why there is none. */
type Answer = { readonly name: string; readonly content: string | Uint8Array } | { readonly refused: Text };

/** The addresses of what a corpus is told as: what there is, and the file of one; files are made one after the other. */
export function tellingRoutes(hono: Hono, folder: string, tools: Tools): void {
  let busy = false;
  hono.get("/corpus/told", async (context) => {
    const loaded = await Promise.all(
      Object.entries(kinds).map(async ([name, load]) => [name, await load()] as const),
    );
    const tellable: readonly Tellable[] = loaded.map(([name, { formats, several, options }]) => ({
      name,
      formats,
      several,
      options: options.map((one) => one.name),
    }));
    return context.json({ tellable });
  });
  const unread = say`Unexpected order, expected what is to be written.`;
  const short = bodyLimit({
    maxSize: largest,
    onError: (context) => context.json({ message: unread }, 400),
  });
  hono.post("/corpus/told", short, async (context) => {
    const read = asking.safeParse(await context.req.json().catch(() => null));
    if (!read.success) return context.json({ message: unread }, 400);
    if (busy)
      return context.json({ message: say`Another file is being made: try again when it is there.` }, 409);
    busy = true;
    try {
      const answer = await made(folder, tools, read.data);
      if ("refused" in answer) return context.json({ message: say`${answer.refused}.` }, 422);
      return context.body(bytesOf(answer.content), 200, {
        "Content-Type": "application/octet-stream",
        "Content-Disposition": `attachment; filename="${answer.name}"`,
      });
    } catch (error) {
      if (!(error instanceof NoCorpus)) throw error;
      return context.json({ message: say`${error.said}.` }, 409);
    } finally {
      busy = false;
    }
  });
}

function bytesOf(content: string | Uint8Array): Uint8Array<ArrayBuffer> {
  return typeof content === "string" ? new TextEncoder().encode(content) : new Uint8Array(content);
}

async function made(
  folder: string,
  tools: Tools,
  { kind: name, format, options, asOf, suppose }: Asking,
): Promise<Answer> {
  const load = Object.hasOwn(kinds, name) ? kinds[name] : undefined;
  if (!load) return { refused: say`Unknown kind \`${name}\`, expected one of those offered` };
  const kind = await load();
  const trouble = troubleWith(kind, format, options);
  if (trouble !== null) return { refused: trouble };
  const lens: Lens = {
    ...(asOf === null ? {} : { asOf }),
    ...(suppose === null ? {} : { suppose }),
  };
  const reading = keptReading(folder);
  const work = await atWork(folder, reading.files(), { ...tools, reading });
  const told = await toldOf(folder, work, { lens, reach: kind.reach, today: todayHere() });
  if ("unreadable" in told)
    return { refused: say`Unreadable corpus, expected one without errors in \`${"corpus.yaml"}\`` };
  if ("refused" in told) return told;
  if (suppose !== null && told.model.graph.supposed === null)
    return { refused: unknownSupposition(told.model.graph, suppose) };
  const files = await kind.make(told, format, name, options);
  if ("refused" in files) return files;
  const [first, ...others] = files;
  if (first === undefined) return { refused: say`Nothing to write, expected something to be told` };
  if (others.length > 0) return { name: `${name}.zip`, content: zipOf(files) };
  const ending = /\.([a-z0-9]+)$/u.exec(first.path)?.[1] ?? format;
  return { name: `${name}.${ending}`, content: first.content };
}

function troubleWith(kind: Kind, format: string, options: Asking["options"]): Text | null {
  if (!kind.formats.includes(format)) return say`Unknown format \`${format}\`, expected one of those offered`;
  const known = kind.options.map((one) => one.name);
  const stray = Object.keys(options).find((one) => !known.includes(one));
  return stray === undefined ? null : say`Unknown option \`${stray}\`, expected one of those offered`;
}
