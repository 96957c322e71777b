/** A file that was made: its path below the place it goes to, `/` between folders, and what it holds. */
export interface Made {
  readonly path: string;
  readonly content: string | Uint8Array;
}
