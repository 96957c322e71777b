import type { SourceFile } from "../../read/source-file.ts";

/** The last commit of the repository that a corpus lies in. */
export interface Commit {
  readonly hash: string;
  /** When it was made, as an ISO 8601 instant in UTC. */
  readonly when: string;
  /** The first line of its message. */
  readonly subject: string;
}

/** The corpus as it was last committed; where there is no commit, why. */
export type Committed =
  | { readonly commit: Commit; readonly files: readonly SourceFile[] }
  | { readonly commit: null; readonly files: readonly []; readonly why: NoCommit };

/** Why there is nothing to compare with: no `git`, no repository round the folder, no commit in it, or git would not read it. */
export type NoCommit = "no-program" | "no-repository" | "no-commit" | "unreadable";
