import { coded, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";

/** An element of an XML text: its name as written, its attributes, and the elements in it; texts are passed over. */
export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly inside: readonly Element[];
}

/** What keeps a text from being XML, and where. */
export interface NotXml {
  readonly trouble: Said;
  readonly at: number;
}

const deepest = 64;
const most = 100_000;
const part =
  /<!--(?:(?!--)[\s\S])*-->|<\?(?!xml-stylesheet)[\s\S]*?\?>|<!\[CDATA\[[\s\S]*?\]\]>|<\/([\w:.-]+)\s*>|<([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/y;
const attribute = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

interface Open {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly inside: Element[];
}

/**
 * The root element of an XML text, as far as a citation style needs: elements and attributes are well nested and
 * closed. A document type is refused, since it can name other files and make a short text endless.
 */
export function xmlIn(text: string): Element | NotXml {
  const open: Open[] = [];
  let root: Element | null = null;
  let count = 0;
  let at = text.startsWith("\uFEFF") ? 1 : 0;
  for (;;) {
    const next = text.indexOf("<", at);
    const between = text.slice(at, next < 0 ? text.length : next);
    if (open.length === 0 && between.trim() !== "") return { trouble: say`text outside the elements`, at };
    if (next < 0) break;
    part.lastIndex = next;
    const found = part.exec(text);
    if (!found) return { trouble: troubleAt(text, next), at: next };
    at = next + found[0].length;
    const [, closed, opened, attributes = "", empty] = found;
    if (closed !== undefined) {
      const last = open.pop();
      if (last?.name !== closed) return { trouble: say`${`</${closed}>`} that closes nothing`, at: next };
      if (open.length === 0) root = last;
    } else if (opened !== undefined) {
      if (open.length === 0 && root) return { trouble: say`${`<${opened}>`} after the end`, at: next };
      if (open.length === deepest || ++count > most)
        return { trouble: say`more elements than a style has`, at: next };
      const element: Open = { name: opened, attributes: attributesIn(attributes), inside: [] };
      open.at(-1)?.inside.push(element);
      if (empty !== "/") open.push(element);
      else if (open.length === 0) root = element;
    }
  }
  const left = open.at(-1);
  if (left) return { trouble: say`${`<${left.name}>`} that is never closed`, at: text.length };
  return root ?? { trouble: say`no element`, at: 0 };
}

function troubleAt(text: string, at: number): Said {
  return text.startsWith("<!DOCTYPE", at)
    ? say`a document type`
    : coded(text.slice(at, at + 20).split("\n")[0] ?? "");
}

function attributesIn(text: string): ReadonlyMap<string, string> {
  return new Map(
    [...text.matchAll(attribute)].map(([, name = "", double, single = ""]) => [name, double ?? single]),
  );
}

/** All elements below one, itself not among them, in the order of the text. */
export function below(element: Element): readonly Element[] {
  return element.inside.flatMap((one) => [one, ...below(one)]);
}
