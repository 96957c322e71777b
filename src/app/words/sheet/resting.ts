import { arabicResting } from "../arabic/sheet/resting.ts";
import { told } from "../reader/told.ts";

/** Words of what a claim would fall without, on a sheet. */
export const restingWords = told(
  {
    title: "If something were lost",
    together: "It would also fall with these lost together:",
    more: (n: number) => (n === 1 ? "One more" : `${n} more`),
    further: "The command line looks further: check --rests-on.",
    lines: "Lines that lead to it",
    path: (n: number) => `Line ${n}`,
    caution:
      "Lines count every premise as if it would do alone. Where a step needs several at once, there are fewer than it seems; the losses above are exact.",
    circle: "These hold each other up in a circle, which adds nothing:",
    author: (one: string) => `One author on two lines, ${one}:`,
    ask: "Where one copies the other, record it with repeats or via; then they are one line.",
  },
  arabicResting,
);
