import { coded, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import { misplaced } from "./nesting.ts";
import { below, xmlIn } from "./xml.ts";
import type { Element } from "./xml.ts";

/** What keeps a text from being used as a citation style; `like` is the name of the style that it stands for. */
export interface StyleTrouble {
  readonly unexpected: Said;
  readonly expected: Said;
  readonly like: string | null;
}

const namespace = "http://purl.org/net/xbiblio/csl";
/** The most elements a layout may come to once every macro in it is written out. */
const mostWrittenOut = 100_000;

/** Why a text is no style of CSL 1.0.2 that stands by itself, as far as it can be told without using it; null where it is one. */
export function styleTrouble(text: string): StyleTrouble | null {
  const root = xmlIn(text);
  if ("trouble" in root)
    return trouble(
      say`${root.trouble} in line ${String(lineAt(text, root.at))}`,
      say`a style in ${"CSL"}, which is ${"XML"}`,
    );
  if (root.name !== "style" || root.attributes.get("xmlns") !== namespace)
    return trouble(say`element \`${root.name}\``, say`${coded("style")} in the namespace of ${"CSL"}`);
  const parent = parentOf(root);
  const layout = child(child(root, "citation"), "layout");
  if (parent !== null && !layout)
    return trouble(
      say`dependent style without rules of its own`,
      say`the style it leads to, \`${parent}\``,
      parent,
    );
  if (!layout)
    return trouble(say`style without ${coded("citation")} or without a ${coded("layout")} in it`, say`one`);
  const odd = misplaced(root);
  if (odd !== null) return trouble(odd, say`a style as ${"CSL 1.0.2"} has it`);
  return macroTrouble(root);
}

function trouble(unexpected: Said, expected: Said, like: string | null = null): StyleTrouble {
  return { unexpected, expected, like };
}

function child(element: Element | undefined, name: string): Element | undefined {
  return element?.inside.find((one) => one.name === name);
}

/** The last part of the address of the style that a dependent one leads to. */
function parentOf(root: Element): string | null {
  const links = child(root, "info")?.inside.filter((one) => one.name === "link") ?? [];
  const link = links.find((one) => one.attributes.get("rel") === "independent-parent");
  return link ? (link.attributes.get("href")?.split("/").at(-1) ?? "").slice(0, 120) : null;
}

function lineAt(text: string, at: number): number {
  return text.slice(0, at).split("\n").length;
}

/** A macro that is called and is not there, one that calls itself, and macros that grow beyond all measure. */
function macroTrouble(root: Element): StyleTrouble | null {
  const macros = new Map(
    root.inside
      .filter((one) => one.name === "macro")
      .map((one) => [one.attributes.get("name") ?? "", one] as const),
  );
  const sizes = new Map<string, number>();
  const inside = new Set<string>();
  let found: StyleTrouble | null = null;
  const sizeOf = (element: Element): number =>
    below(element).reduce((sum, one) => {
      const called = one.name === "text" || one.name === "key" ? one.attributes.get("macro") : undefined;
      return sum + 1 + (called === undefined ? 0 : sizeOfMacro(called));
    }, 0);
  const sizeOfMacro = (name: string): number => {
    const known = sizes.get(name);
    if (known !== undefined) return known;
    const macro = macros.get(name);
    if (!macro || inside.has(name)) {
      found ??= macro
        ? trouble(say`macro \`${name}\` that calls itself`, say`one that comes to an end`)
        : trouble(say`call of the macro \`${name}\``, say`one that the style has`);
      return 0;
    }
    inside.add(name);
    const size = sizeOf(macro);
    inside.delete(name);
    sizes.set(name, size);
    return size;
  };
  const size = root.inside
    .filter((one) => one.name === "citation" || one.name === "bibliography")
    .reduce((sum, one) => sum + sizeOf(one), 0);
  if (!found && size > mostWrittenOut)
    return trouble(say`style that its macros make endless`, say`a smaller one`);
  return found;
}
