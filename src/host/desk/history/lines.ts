import * as z from "zod";

const hash = z.string().regex(/^[0-9a-f]{64}$/);
const id = z.string().regex(/^[0-9a-f]{16}$/);
const file = z.string().min(1).max(1024);
const kinds = ["edit", "undo", "redo", "back", "outside"] as const;

const begun = z.object({
  begin: id,
  kind: z.enum(kinds),
  step: z.string().max(1000),
  when: z.string().max(40),
  of: id.optional(),
  files: z.array(z.object({ file, was: hash.nullable(), is: hash.nullable() })).max(10_000),
});
const ended = z.object({ end: id, how: z.enum(["done", "back"]) });
const head = z.object({
  from: z.number().int().min(1).max(999_999_999),
  known: z.array(z.tuple([file, hash.nullable()])),
});

/** A step that was begun: what is to become of which files. `of` is the step that it takes back. */
export type Begun = Readonly<z.infer<typeof begun>>;

/** A line of a history: a step begun, how one ended, or what was known when a part of the history began. */
export type Line = Begun | Readonly<z.infer<typeof ended>> | Readonly<z.infer<typeof head>>;

const line = z.union([begun, ended, head]);

/** The lines of a part of a history, and how many could not be read: they are passed over. */
export function linesIn(text: string): { readonly lines: readonly Line[]; readonly broken: number } {
  const lines: Line[] = [];
  let broken = 0;
  for (const written of text.split("\n")) {
    if (written === "") continue;
    const read = line.safeParse(jsonIn(written));
    if (read.success) lines.push(read.data);
    else broken++;
  }
  return { lines, broken };
}

/**
 * A line as it is added to a history. It opens with a line end, so that what a program broken off in the middle
 * left behind spoils no other line.
 */
export function writtenLine(written: Line): string {
  return `\n${JSON.stringify(written)}\n`;
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
