import { filtersIn } from "./filters.ts";
import { ledBy } from "./led.ts";
import type { Led } from "./led.ts";
import { markupOf } from "./markup.ts";
import type { DrawnElement } from "./markup.ts";
import { writtenOut } from "./written-out.ts";

/** Why a drawing would never be done: it repeats parts of itself beyond measure, or filters the whole of it again and again. */
export type Endless = "repeated" | "filtered";

/** The most elements that a drawing may gain once each `use` in it is written out: the signs on a plan of a whole site are fewer. */
const mostUsed = 100_000;
/** The same with what is worn, of which a browser keeps much: a hatch on each of a thousand features. */
const mostWorn = 1_000_000;
/** How many blurs over the whole of it a drawing may come to: some seconds of a browser. */
const mostFiltered = 200;

/** What repeats itself where it is worn; a colour that runs from one to another does not. */
const drawn = new Set(["pattern", "mask", "clipPath", "marker"]);

/**
 * Why an SVG is not to be shown, null where it may be: an element that is used in another that is used again stands there
 * as often as it would be written out, and what shows it is not to be stopped.
 */
export function endlessIn(svg: string): Endless | null {
  const markup = markupOf(svg);
  if (!markup) return "repeated";
  const { elements } = markup;
  const led = ledBy(markup, mostWorn);
  if (!led) return "repeated";
  const places = new Map<string, number>();
  // Of two with one name the first is meant.
  elements.forEach(({ attributes }, at) => {
    const id = attributes.get("id");
    if (id !== undefined && !places.has(id)) places.set(id, at);
  });
  const placed = (ids: readonly string[]): readonly number[] => ids.flatMap((id) => places.get(id) ?? []);
  const used = led.map((one) => placed(one.used).map((to) => ({ to, times: 1 })));
  const worn = led.map(({ worn: ids, marked }, at) => {
    const times = marked ? pointsOf(elements[at]) : 1;
    return placed(ids)
      .filter((to) => drawn.has(elements[to]?.name ?? ""))
      .map((to) => ({ to, times }));
  });
  const both = used.map((one, at) => [...one, ...(worn[at] ?? [])]);
  const ones = elements.map(() => 1);
  if (writtenOut(elements, used, ones, mostUsed) > mostUsed) return "repeated";
  if (writtenOut(elements, both, ones, mostWorn) > mostWorn) return "repeated";
  const filters = filtersIn(elements);
  const passes = led.map((one) => passesOf(one, filters));
  const total = passes.reduce((sum, one) => sum + one, 0);
  if (total === 0) return null;
  return total + writtenOut(elements, both, passes, mostFiltered) > mostFiltered ? "filtered" : null;
}

/** How many points a line has, of which two numbers make one. */
function pointsOf(element: DrawnElement | undefined): number {
  const points = `${element?.attributes.get("d") ?? ""} ${element?.attributes.get("points") ?? ""}`;
  return 1 + Math.ceil((points.match(/\d+\.?\d*|\.\d+/gu)?.length ?? 0) / 2);
}

function passesOf({ worn, filters, elsewhere }: Led, known: ReadonlyMap<string, number>): number {
  return elsewhere ? 2 * mostFiltered : worn.reduce((sum, id) => sum + (known.get(id) ?? 0), filters);
}
