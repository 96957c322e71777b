/** What a work that can be done in slices comes to, done at once. */
export function atOnce<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const slice = work.next();
    if (slice.done === true) return slice.value;
  }
}
