import { readYaml } from "../../yaml/text.ts";
import type { Style } from "../site/site.ts";
import { saysSame, writtenOf } from "../written.ts";

/** What decides how a text is written in one line. */
export interface Setting {
  /** Inside brackets, where commas and brackets part values. */
  readonly flow: boolean;
  /** How the text was written that it takes the place of; null for one that is new. */
  readonly was: Style | null;
  /** The quotes of the record round it. */
  readonly quotes: "single" | "double" | null;
  /** Always in quotes. */
  readonly explicit: boolean;
}

/** A text as a scalar in one line: bare where that reads back as itself, else in the quotes that stood or stand round it. */
export function scalarIn(text: string, { flow, was, quotes, explicit }: Setting): string {
  const kept = was === "single" || was === "double" ? was : null;
  const bare = kept === null && !explicit && (was === "plain" || !/^[-<>]/u.test(text));
  if (bare && readsBare(text, flow)) return text;
  const wanted = kept ?? quotes ?? (/["\\]/u.test(text) && !text.includes("'") ? "single" : "double");
  return wanted === "single" && !needsEscape.test(text) ? singleQuoted(text) : doubleQuoted(text);
}

/** A text in double quotes, with what cannot stand in a line written as escapes. */
export function doubleQuoted(text: string): string {
  const inner = text.replace(/[\\"]/gu, "\\$&").replace(everyEscape, (sign) => {
    const named = escapes[sign];
    if (named !== undefined) return named;
    const code = sign.charCodeAt(0).toString(16).toUpperCase();
    return code.length <= 2 ? `\\x${code.padStart(2, "0")}` : `\\u${code.padStart(4, "0")}`;
  });
  return `"${inner}"`;
}

/** A text in single quotes. */
export function singleQuoted(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}

/** Whether a text can stand without quotes and is then read as itself. */
export function readsBare(text: string, flow: boolean): boolean {
  if (text === "" || text !== text.trim() || needsEscape.test(text)) return false;
  if (harmless.test(text)) return true;
  const block = `k: ${text}\nl:\n  - ${text}\n`;
  const inside = `k: { a: ${text}, b: [${text}, c], d: [${text}], e: ${text} }\n`;
  return (
    reads(block, { k: text, l: [text] }) &&
    (!flow || reads(inside, { k: { a: text, b: [text, "c"], d: [text], e: text } }))
  );
}

/** A name as a key of a map. */
export function keyIn(name: string, flow: boolean): string {
  if (harmless.test(name)) return name;
  const bare =
    name !== "" &&
    name === name.trim() &&
    !needsEscape.test(name) &&
    reads(
      flow ? `k: { ${name}: x, l: x }\n` : `${name}: x\nl: x\n`,
      flow ? { k: { [name]: "x", l: "x" } } : { [name]: "x", l: "x" },
    );
  return bare ? name : doubleQuoted(name);
}

/** Letters, figures and signs that mean nothing in YAML, beginning with a letter or figure. */
const harmless = /^[\p{L}\p{N}](?:[\p{L}\p{N}\p{M} .;()/–—’%+=_-]*[\p{L}\p{N}\p{M}.;()/–—’%+=_-])?$/u;

/** Signs that cannot stand in one line of a file as themselves: breaks, controls, a byte-order mark, half of a pair. */
const unwritable =
  "[\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029\\ufeff\\ufffe\\uffff]|[\\ud800-\\udbff](?![\\udc00-\\udfff])|(?<![\\ud800-\\udbff])[\\udc00-\\udfff]";
const needsEscape = new RegExp(unwritable);
const everyEscape = new RegExp(unwritable, "g");

const escapes: Readonly<Record<string, string>> = { "\n": "\\n", "\r": "\\r", "\t": "\\t", "\0": "\\0" };

type Plain = string | readonly Plain[] | { readonly [key: string]: Plain };

function reads(yaml: string, expected: Plain): boolean {
  const { root, findings } = readYaml("", yaml);
  return root !== null && findings.length === 0 && saysSame(writtenOf(root), expected);
}
