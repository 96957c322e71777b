import type { DrawnElement } from "./markup.ts";

/** How long what a filter does takes, a blur over a whole picture being one; of what is not named, as long as that. */
const weights: Readonly<Record<string, number>> = {
  feDiffuseLighting: 3,
  feSpecularLighting: 3,
  feConvolveMatrix: 8,
  feDisplacementMap: 20,
  feMorphology: 50,
};

/** What each filter of a drawing takes, by its id, with all that its last step is made from as often as it is asked for. */
export function filtersIn(elements: readonly DrawnElement[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  elements.forEach(({ name, attributes, to }, at) => {
    const id = attributes.get("id");
    if (name === "filter" && id !== undefined)
      found.set(id, Math.min(1e6, Math.max(found.get(id) ?? 0, costOf(elements.slice(at + 1, to)))));
  });
  return found;
}

/** What a filter is given, and not made by a step of its own. */
const given = /^(?:Source(?:Graphic|Alpha)|Background(?:Image|Alpha)|FillPaint|StrokePaint)$/u;
/** What belongs to a step, and is none. */
const within = /^fe(?:Func[RGBA]|\w+Light)$/u;

function costOf(steps: readonly DrawnElement[]): number {
  const results = new Map<string, number>();
  let [before, last] = [0, 0];
  let result = "";
  for (const { name, attributes } of steps) {
    if (!name.startsWith("fe") || within.test(name)) continue;
    const isNode = name === "feMergeNode";
    if (!isNode) {
      before = last;
      last = weights[name] ?? 1;
      result = attributes.get("result") ?? "";
    }
    const inputs = name === "feMerge" ? [] : isNode ? ["in"] : ["in", "in2"];
    for (const input of inputs) {
      const from = attributes.get(input);
      if (from === undefined && input === "in2") continue;
      last += given.test(from ?? "") ? 0 : (results.get(from ?? "") ?? before);
    }
    if (isNode) last += 1;
    if (result !== "") results.set(result, last);
  }
  return last;
}
