import type { Context, Hono } from "hono";
import { NoCorpus } from "../host/corpus-folder.ts";
import type { DeskState } from "../host/desk/state.ts";
import type { Declared } from "../host/guest/guest.ts";
import type { SourceFile } from "../read/source-file.ts";
import { firstOf } from "../show/pages/incipit/first.ts";
import type { FilesTold, Reading } from "./reading.ts";

/** What is told with the files: the plug-ins of the corpus that may run, and what can be done at the desk. */
export interface Beside {
  readonly desk: () => DeskState;
  readonly guests: (files: readonly SourceFile[]) => Promise<readonly Declared[]>;
}

/** Whom to tell that the files are others by now, and when every later change of them is seen. */
export interface Watching {
  readonly changed: () => void;
  readonly begun: Promise<void>;
}

/** Where the files are told in lines: what is said before them. */
export interface Head extends Omit<FilesTold, "files"> {
  readonly guests: readonly Declared[];
  readonly desk: DeskState;
  /** How many files follow, and how many of them, the first, hold the questions and their answers. */
  readonly count: number;
  readonly first: number;
  /** How many signs of text all of them have. */
  readonly size: number;
}

/** About so many signs of text go into one line. */
const lineful = 256 * 1024;

/**
 * The address at which the files of a corpus are told: as one document, or with `in=lines` as lines of JSON, a head and then
 * lists of files, of which those with the questions come first. Who has none yet is told in lines at once what was read
 * last; the folder is looked at again behind the answer, not before it is watched, and `changed` is called where it was of the past.
 */
export function filesRoutes(hono: Hono, reading: Reading, beside: Beside, watching: Watching): void {
  hono.get("/corpus/files", async (context) => {
    const have = context.req.query("have");
    const inLines = context.req.query("in") === "lines";
    try {
      const known = inLines && have === undefined ? reading.known() : null;
      const files = known ?? reading.again();
      const told = reading.since(have);
      const desk = beside.desk();
      const guests = await beside.guests(files);
      if (!inLines) return context.json({ ...told, guests, desk });
      if (known !== null)
        setTimeout(
          () => void watching.begun.then(() => lookAgain(reading, told.version, watching.changed)),
          afterwards,
        );
      const { files: some, ...rest } = told;
      const parted = rest.whole ? firstOf(some) : { first: [], rest: some };
      const size = some.reduce((sum, { text }) => sum + text.length, 0);
      const head: Head = { ...rest, guests, desk, count: some.length, first: parted.first.length, size };
      return inLinesOf(context, linesOf(head, parted.first, parted.rest));
    } catch (error) {
      if (error instanceof NoCorpus) return context.json({ files: [], gone: error.said });
      throw error;
    }
  });
}

/** How long the folder is left alone once its files were asked for, in ms: they are sent meanwhile. */
const afterwards = 1500;

function lookAgain(reading: Reading, version: string, changed: () => void): void {
  try {
    reading.again();
  } catch (error) {
    if (!(error instanceof NoCorpus)) throw error;
  }
  if (reading.version() !== version) changed();
}

function* linesOf(
  head: Head,
  first: readonly SourceFile[],
  rest: readonly SourceFile[],
): Generator<string, void> {
  yield JSON.stringify(head);
  for (const files of [first, rest]) {
    let line: SourceFile[] = [];
    let size = 0;
    for (const file of files) {
      line.push(file);
      size += file.text.length;
      if (size < lineful) continue;
      yield JSON.stringify(line);
      line = [];
      size = 0;
    }
    if (line.length > 0) yield JSON.stringify(line);
  }
}

function inLinesOf(context: Context, lines: Generator<string, void>): Response {
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    pull: (controller) => {
      const line = lines.next();
      if (line.done === true) controller.close();
      else controller.enqueue(encoder.encode(`${line.value}\n`));
    },
  });
  return context.body(body, 200, { "Content-Type": "application/jsonl" });
}
