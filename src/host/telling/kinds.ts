import type { Kind } from "./kind.ts";

/** Everything that a corpus can be told as, by its name; each is loaded when it is asked for. */
export const kinds: Readonly<Record<string, () => Promise<Kind>>> = {
  review: () => import("./review.ts").then((one) => one.review),
  application: () => import("./application.ts").then((one) => one.application),
  visit: () => import("./visit.ts").then((one) => one.visit),
  tables: () => import("./tables.ts").then((one) => one.tables),
  figures: () => import("./figures.ts").then((one) => one.figures),
  slides: () => import("./slides.ts").then((one) => one.slides),
  data: () => import("./data.ts").then((one) => one.data),
  page: () => import("./text/page.ts").then((one) => one.page),
};
