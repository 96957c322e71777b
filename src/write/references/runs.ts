import { escaped } from "../../base/text/steering.ts";

/** How a stretch of text is set; what is not said is as the text around it. */
export interface Look {
  readonly italic?: true;
  readonly bold?: true;
  readonly smallCaps?: true;
  readonly underlined?: true;
  readonly raised?: "above" | "below";
}

/** A stretch of text of one look; `href` is where it leads. A line feed in the text begins a new line. */
export interface Run extends Look {
  readonly text: string;
  readonly href?: string;
}

/** A citation or a reference, ready to be shown. */
export type Runs = readonly Run[];

/** The text alone. */
export function plainOf(runs: Runs): string {
  return runs.map((run) => run.text).join("");
}

/** The same as a piece of HTML: text is escaped, and of elements there are `a`, `br`, `em`, `span`, `strong`, `sub`, `sup`, `u`. */
export function htmlOf(runs: Runs): string {
  return runs.map(elementOf).join("");
}

function elementOf(run: Run): string {
  let html = escaped(run.text).replaceAll("\n", "<br>");
  if (run.raised !== undefined) html = run.raised === "above" ? `<sup>${html}</sup>` : `<sub>${html}</sub>`;
  if (run.smallCaps) html = `<span class="small-caps">${html}</span>`;
  if (run.underlined) html = `<u>${html}</u>`;
  if (run.bold) html = `<strong>${html}</strong>`;
  if (run.italic) html = `<em>${html}</em>`;
  return run.href === undefined ? html : `<a href="${escaped(run.href)}">${html}</a>`;
}

/** Runs without empty ones, those of one look joined, without space or line feeds at the ends. */
export function joined(runs: Runs): Runs {
  const all: Run[] = [];
  for (const run of runs) {
    const last = all.at(-1);
    if (last && sameLook(last, run)) all[all.length - 1] = { ...last, text: last.text + run.text };
    else if (run.text !== "") all.push(run);
  }
  return trimmed(all);
}

function sameLook(one: Run, other: Run): boolean {
  return (
    one.italic === other.italic &&
    one.bold === other.bold &&
    one.smallCaps === other.smallCaps &&
    one.underlined === other.underlined &&
    one.raised === other.raised &&
    one.href === other.href
  );
}

function trimmed(runs: readonly Run[]): Runs {
  const all = [...runs];
  for (let first = all[0]; first; first = all[0]) {
    const text = first.text.trimStart();
    if (text !== "") {
      all[0] = { ...first, text };
      break;
    }
    all.shift();
  }
  for (let last = all.at(-1); last; last = all.at(-1)) {
    const text = last.text.trimEnd();
    if (text !== "") {
      all[all.length - 1] = { ...last, text };
      break;
    }
    all.pop();
  }
  return all;
}
