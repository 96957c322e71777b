/** Choices that Enter asked for and that are not there yet. */
const due = new Set<Promise<void>>();

/** Says that a choice is to come; what is given back says that it came, or never will. */
export function choiceDue(): () => void {
  let end = (): void => undefined;
  const made = new Promise<void>((resolve) => (end = resolve));
  due.add(made);
  return () => {
    due.delete(made);
    end();
  };
}

/** When every choice that was asked for is in the form, or was given up. */
export async function choicesMade(): Promise<void> {
  await Promise.all(due);
}
