/** How far a long part of a work is: so many of all its answers or rules have been looked at. */
export interface Slice {
  readonly looked: "answers" | "rules";
  readonly done: number;
  readonly of: number;
}

/** What a work that can be done in slices comes to, done at once. */
export function atOnce<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const slice = work.next();
    if (slice.done === true) return slice.value;
  }
}
