import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { hashOf } from "../base/text/hash.ts";
import type { Outcome } from "../derive/run.ts";

/** The outcomes of earlier runs, kept in the user's cache folder; it may be deleted at any time. */
export interface MemoStore {
  readonly load: () => Map<string, Outcome>;
  /** Keeps what the given runs gave; a cache that cannot be written is no fault of the user's and is passed over. */
  readonly save: (outcomes: ReadonlyMap<string, Outcome>) => void;
}

/**
 * The store of one corpus, named by its folder. What only a question about losses asks for is kept in a `shelf` of its
 * own: thousands of outcomes that no other question should wait for.
 */
export function memoStoreFor(corpus: string, shelf: "all" | "losses" = "all"): MemoStore {
  const name = hashOf(resolve(corpus)).slice(0, 32);
  return shelf === "all"
    ? memoStoreIn(join(cacheFolder(), `${name}.json`))
    : memoStoreIn(join(cacheFolder(), `${name}-losses.json`), bare);
}

/** A store in a file; `kept` is what of an outcome is kept. */
export function memoStoreIn(file: string, kept: (outcome: Outcome) => Outcome = (all) => all): MemoStore {
  return {
    load: () => {
      try {
        return outcomesIn(JSON.parse(readFileSync(file, "utf8")));
      } catch {
        return new Map();
      }
    },
    save: (outcomes) => {
      const beside = `${file}.${process.pid}.part`;
      try {
        mkdirSync(dirname(file), { recursive: true });
        const compute = Object.fromEntries(lasting(outcomes).map(([key, one]) => [key, kept(one)]));
        writeFileSync(beside, JSON.stringify({ version: 1, compute }));
        renameSync(beside, file);
      } catch {
        rmSync(beside, { force: true });
      }
    },
  };
}

/** An outcome without what its figure is drawn from: of losses only the numbers are asked. */
function bare(outcome: Outcome): Outcome {
  return outcome.status === "computed" ? { ...outcome, data: null } : outcome;
}

/** The outcomes that another try would give again. */
function lasting(outcomes: ReadonlyMap<string, Outcome>): readonly (readonly [string, Outcome])[] {
  return [...outcomes].filter(([, outcome]) => outcome.status !== "failed" || outcome.passing !== true);
}

/** What a cache file holds, as far as it is what this version writes. */
export function outcomesIn(kept: unknown): Map<string, Outcome> {
  const table = kept as { readonly version?: unknown; readonly compute?: unknown } | null;
  if (table?.version !== 1 || typeof table.compute !== "object" || table.compute === null) return new Map();
  const states = ["computed", "refused", "failed"];
  return new Map(
    Object.entries(table.compute as Readonly<Record<string, Outcome>>).filter(
      ([key, outcome]) => /^[0-9a-f]{64}$/.test(key) && states.includes(outcome?.status),
    ),
  );
}

function cacheFolder(): string {
  const { XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  const base = XDG_CACHE_HOME || LOCALAPPDATA || join(homedir(), ".cache");
  return join(base, "variorum");
}
