import { formatNumber } from "../../../../../base/quantity/quantity-print.ts";
import type { ImagePage } from "../../../../../show/artefacts/picture/page.ts";
import type { Draft } from "./draft.ts";

/** What is measured on a picture before anything was: what is known of it is filled in. */
export function freshDraft(page: ImagePage, perInch: number | null): Draft {
  const ratio = /\b\d+(?:\.\d+)?\s*[:/]\s*\d+(?:\.\d+)?\b/u.exec(page.scale ?? "")?.[0] ?? "";
  const [only, ...others] = page.things;
  return {
    scale: {
      way: "bar",
      length: "",
      known: null,
      ratio,
      perInch: perInch === null ? "" : formatNumber(perInch, 5),
      within: "1 %",
      readings: [],
    },
    taken: "distance",
    readings: [],
    halfWidth: "",
    of: only && others.length === 0 ? only.id : null,
    dimension: "",
    between: "",
    unit: "cm",
    basis: ["photograph", "drawing", "scan"].find((one) => one === page.kind) ?? "",
    by: null,
    year: page.year,
  };
}
