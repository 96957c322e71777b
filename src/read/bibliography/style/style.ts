import { finding } from "../../../base/finding.ts";
import type { Finding, Fix, Span } from "../../../base/finding.ts";
import { nearest } from "../../../base/nearest.ts";
import { coded, row, say } from "../../../base/text/said/said.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import { slipFor } from "../../../base/text/slip.ts";
import { fileNamed, missingFile } from "../../settings/named-file.ts";
import type { SourceFile } from "../../source-file.ts";
import { styleTrouble } from "./csl-style.ts";
import { defaultStyle, shippedNamed, shippedStyles } from "./shipped.ts";
import type { ShippedStyle } from "./shipped.ts";

/** The style in which a corpus cites: one that comes with the program, or the text of one of its own files. */
export type CitationStyle =
  { readonly shipped: ShippedStyle } | { readonly file: string; readonly text: string };

/** The end of the path of a style among the files of a corpus. */
const styleFile = /\.csl$/i;

/**
 * The style that the settings name, null where they name none; `at` is where they do. One that cannot be used is told,
 * and the default takes its place.
 */
export function citationStyleIn(
  named: string | null,
  files: ReadonlyMap<string, SourceFile>,
  at: Span,
): { readonly style: CitationStyle; readonly findings: readonly Finding[] } {
  const shipped = shippedNamed(named ?? defaultStyle);
  if (shipped !== null) return { style: { shipped }, findings: [] };
  const name = named ?? "";
  const instead = (
    rule: string,
    message: Text,
    fix: Fix | null = null,
  ): ReturnType<typeof citationStyleIn> => ({
    style: { shipped: defaultStyle },
    findings: [finding(rule, message, at, { fix })],
  });
  if (!styleFile.test(name)) {
    const meant = slipFor(hyphened(name), shippedStyles);
    const fix = meant === null ? null : { label: say`Write ${meant}`, edits: [{ ...at, text: meant }] };
    return instead("bad-value", unknownName(name), fix);
  }
  const file = fileNamed(files, name);
  if (!file) return { style: { shipped: defaultStyle }, findings: [missingFile(name, files.keys(), at)] };
  if (file.problem !== undefined) return instead("unreadable-file", say`\`${name}\`: ${file.problem}`);
  const trouble = styleTrouble(file.text);
  if (!trouble) return { style: { file: name, text: file.text }, findings: [] };
  const { unexpected, expected, like } = trouble;
  const due =
    like !== null && shippedNamed(like) !== null ? say`${expected}, which comes with the program` : expected;
  return instead("bad-value", say`Unexpected ${unexpected} in \`${name}\`, expected ${due}`);
}

function hyphened(name: string): string {
  return name.toLowerCase().replace(/[\s_]+/g, "-");
}

function unknownName(name: string): Said {
  const near = nearest(hyphened(name), shippedStyles);
  const names = (near.length > 0 ? near : shippedStyles).map(coded);
  return say`Unknown citation style \`${name}\`, expected ${row(names, "or")}, or the path of a ${".csl"} file in the corpus`;
}
