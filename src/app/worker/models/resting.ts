import { restingPage } from "../../../show/judged/resting/page.ts";
import type { RestingPage } from "../../../show/judged/resting/page.ts";
import type { Desk } from "../desk.ts";
import { plugins } from "../plugins.ts";

/** A sheet with what its claim would fall without; nothing where it answers no question or does not stand. */
export function withResting<S extends { readonly id: string }>(
  { model, memo, need }: Desk,
  sheet: S | null,
): (S & { readonly resting: RestingPage | null }) | null {
  if (!sheet) return null;
  const { page, missing } = restingPage(model, plugins, memo, sheet.id);
  need(missing);
  return { ...sheet, resting: page };
}
