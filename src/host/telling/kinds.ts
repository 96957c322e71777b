import type { Kind } from "./kind.ts";

/** Everything that a corpus can be told as, by its name; each is loaded when it is asked for. */
export const kinds: Readonly<Record<string, () => Promise<Kind>>> = {
  review: () => import("./review.ts").then((one) => one.review),
  visit: () => import("./visit.ts").then((one) => one.visit),
  figures: () => import("./figures.ts").then((one) => one.figures),
};
