import { randomBytes } from "node:crypto";
import type { FileChange } from "../../base/text/edit.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { nodeDisk } from "./disk.ts";
import { draftsOf } from "./drafts.ts";
import type { Drafts } from "./drafts.ts";
import { movesOf } from "./files/moves.ts";
import { isSame } from "./files/standing.ts";
import { usualLimits } from "./history/bound.ts";
import { journalOf } from "./history/journal.ts";
import { recover } from "./history/recover.ts";
import { turnable } from "./history/replay.ts";
import { makeStep, movesTo, noteOutside } from "./history/steps.ts";
import type { Site, Tools } from "./history/steps.ts";
import { movesBack } from "./history/turn.ts";
import { CannotWrite, inWords, isOfDisk, nothingWritten } from "./refusal.ts";
import { makeRoom, readOnlyReason, roomCleared, roomIn } from "./room.ts";
import { seated, usualSitting } from "./seat.ts";
import type { DeskState, Step } from "./state.ts";

export type { Tools } from "./history/steps.ts";

/** Where a corpus is changed, and what was changed is kept. What cannot be done is thrown as `CannotWrite`, and nothing is changed. */
export interface Desk {
  readonly state: () => DeskState;
  /** Makes changes of files, all or none, as one step of that name; gives its number, or that of the last where nothing changes. */
  readonly edit: (step: string, changes: readonly FileChange[]) => number;
  /** Takes back the last step that was not; gives its name. */
  readonly undo: () => string;
  /** Does the step again that was taken back last; gives its name. */
  readonly redo: () => string;
  /** Makes the files as they were after a step, as a new step; 0 or the number before the first: as they were before it. */
  readonly back: (n: number, step?: string) => number;
  /** Writes down what was changed outside in files that steps know of, so that the history has it. */
  readonly notice: () => void;
  /** The steps that are kept, from the oldest. */
  readonly steps: () => readonly Step[];
  /** A text of the history by its SHA-256, null where there is none. */
  readonly text: (hash: string) => Uint8Array | null;
  readonly drafts: Drafts;
}

const usual: Tools = {
  disk: nodeDisk,
  now: () => Date.now(),
  name: () => randomBytes(8).toString("hex"),
  limits: usualLimits,
  sitting: usualSitting,
};

/**
 * Sits down at the desk of a corpus: what an earlier program was broken off in is brought to an end, and what was
 * changed outside since is noted. Where nothing can be written, the desk says so, and the corpus can be read.
 */
export function openDesk(folder: string, given: Partial<Tools> = {}): Desk {
  const tools: Tools = { ...usual, ...given };
  const { disk } = tools;
  const told: Text[] = [];
  const tell = (one: Text): void => void told.push(one);
  const journal = journalOf(disk, folder, tools.limits, tell);
  const site: Site = { folder, tools, journal };
  const doing = <T>(one: () => T): T => {
    const reason = readOnlyReason(disk, folder);
    if (reason !== null) throw new CannotWrite(nothingWritten(reason));
    try {
      roomCleared(disk, folder).forEach(tell);
      makeRoom(disk, folder, roomIn(folder).desk);
      return seated(disk, folder, tools.sitting, () => {
        recover(disk, folder, journal);
        return one();
      });
    } catch (error) {
      throw inWords(error);
    }
  };
  const notice = (): void => {
    if (isUntouched(site)) return;
    try {
      doing(() => noteOutside(site));
    } catch (error) {
      if (!(error instanceof CannotWrite)) throw error;
    }
  };
  const turn = (kind: "undo" | "redo"): string => {
    const step = turnable(journal.read())[kind].at(-1);
    if (!step) throw new CannotWrite(nothingWritten(noStep[kind]));
    noteOutside(site, namesOf(step.files));
    makeStep(site, { kind, step: step.step, of: step.begin }, movesBack(disk, folder, journal, step));
    return step.step;
  };
  notice();
  return {
    state: () => stateOf(site, told),
    edit: (step, changes) =>
      doing(() => {
        const moves = movesOf(disk, folder, changes).filter(({ was, is }) => !isSame(was, is));
        if (moves.length === 0) return journal.read().next - 1;
        noteOutside(site, namesOf(moves));
        return makeStep(site, { kind: "edit", step }, moves);
      }),
    undo: () => doing(() => turn("undo")),
    redo: () => doing(() => turn("redo")),
    back: (n, step) =>
      doing(() => {
        noteOutside(site);
        const moves = movesTo(site, n);
        if (moves.length === 0) return journal.read().next - 1;
        return makeStep(site, { kind: "back", step: step ?? `Back to step ${n}` }, moves);
      }),
    notice,
    steps: () => {
      try {
        return journal.read().made.map(({ n, step, when, kind, files }) => ({ n, step, when, kind, files }));
      } catch (error) {
        throw inWords(error);
      }
    },
    text: journal.text,
    drafts: draftsOf(disk, folder, tell),
  };
}

const noStep = { undo: say`Missing step to undo`, redo: say`Missing step to redo` } as const;

const namesOf = (files: readonly { readonly file: string }[]): readonly string[] =>
  files.map(({ file }) => file);

function passedOver(lines: number): readonly Text[] {
  if (lines === 0) return [];
  if (lines === 1) return [say`One line of the history cannot be read and is passed over`];
  return [say`${count(lines)} lines of the history cannot be read and are passed over`];
}

/** Whether nothing was ever kept of a corpus, so that there is nothing to look after. */
function isUntouched({ folder, tools: { disk } }: Site): boolean {
  try {
    return disk.see(roomIn(folder).desk) === null;
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return true;
  }
}

function stateOf({ folder, tools: { disk }, journal }: Site, told: readonly Text[]): DeskState {
  const readOnly = readOnlyReason(disk, folder);
  try {
    const history = journal.read();
    const { undo, redo } = turnable(history);
    const troubles = [...told, ...passedOver(history.broken)];
    return {
      readOnly,
      undo: undo.at(-1)?.step ?? null,
      redo: redo.at(-1)?.step ?? null,
      ...(troubles.length > 0 ? { troubles } : {}),
    };
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return { readOnly: readOnly ?? say`The history of the corpus cannot be read`, undo: null, redo: null };
  }
}
