/** Choices that Enter asked for and that are not there yet. */
const due = new Set<Promise<void>>();

/** Says that a choice is to come; what is given back says that it came, or never will. */
export function choiceDue(): () => void {
  const { promise, resolve } = withResolve();
  due.add(promise);
  return () => {
    due.delete(promise);
    resolve();
  };
}

function withResolve(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => (resolve = done));
  return { promise, resolve };
}

/** When every choice that was asked for is in the form, or was given up. */
export async function choicesMade(): Promise<void> {
  await Promise.all(due);
}
