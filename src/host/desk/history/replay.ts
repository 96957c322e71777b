import type { Begun, Line } from "./lines.ts";

/** A step that was made, with its number. */
export interface Made extends Begun {
  readonly n: number;
}

/** What the lines of a history come to. */
export interface History {
  /** The steps, in the order in which they were finished. */
  readonly made: readonly Made[];
  /** Steps that were begun and neither finished nor taken back. */
  readonly open: readonly Begun[];
  /** The number the next step will have. */
  readonly next: number;
  /** The SHA-256 of files before the first step, as far as steps that are no longer kept changed them. */
  readonly before: ReadonlyMap<string, string | null>;
}

/** Reads a history from its first line to its last. Lines that refer to what is no longer kept say nothing. */
export function replayed(lines: readonly Line[]): History {
  const begun = new Map<string, Begun>();
  const open = new Map<string, Begun>();
  const made: Made[] = [];
  const before = new Map<string, string | null>();
  let next = 1;
  for (const [place, line] of lines.entries()) {
    if ("from" in line) {
      next = Math.max(next, line.from);
      if (place === 0) for (const [file, hash] of line.known) before.set(file, hash);
    } else if ("begin" in line) {
      begun.set(line.begin, line);
      open.set(line.begin, line);
    } else {
      open.delete(line.end);
      if (line.how === "back") continue;
      // Done is done, also where another program took the step for one that was broken off.
      const step = begun.get(line.end);
      begun.delete(line.end);
      if (step) made.push({ ...step, n: next++ });
    }
  }
  return { made, open: [...open.values()], next, before };
}

/** What the steps of a history left of each file they know of: its SHA-256, null for no file. */
export function knownAfter(history: History, n: number): ReadonlyMap<string, string | null> {
  const known = new Map(history.before);
  for (const step of history.made) {
    for (const { file, was, is } of step.files) {
      if (step.n <= n) known.set(file, is);
      else if (!known.has(file)) known.set(file, was);
    }
  }
  return known;
}

/** The steps that can be taken back, and those that can be done again, the next one last. */
export function turnable(history: History): {
  readonly undo: readonly Made[];
  readonly redo: readonly Made[];
} {
  const undo: Made[] = [];
  const redo: Made[] = [];
  const taken = (from: Made[], id: string | undefined): boolean => {
    const place = from.findIndex((one) => one.begin === id);
    if (place !== -1) from.splice(place, 1);
    return place !== -1;
  };
  for (const step of history.made) {
    if (step.kind === "edit" || step.kind === "back") {
      undo.push(step);
      redo.length = 0;
    } else if (step.kind === "undo" && taken(undo, step.of)) redo.push(step);
    else if (step.kind === "redo" && taken(redo, step.of)) undo.push(step);
  }
  return { undo, redo };
}
