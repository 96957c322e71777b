import type { CslItem } from "../../src/read/bibliography/csl.ts";
import { localesOf } from "../../src/write/references/locales/locales.ts";
import american from "../../src/write/references/locales/locales-en-US.xml?raw";
import { referencesIn } from "../../src/write/references/references.ts";
import type { References } from "../../src/write/references/references.ts";
import { htmlOf, plainOf } from "../../src/write/references/runs.ts";
import apa from "../../src/write/references/styles/apa.csl?raw";
import chicago from "../../src/write/references/styles/chicago-author-date.csl?raw";
import type { Methods } from "./case.ts";

const styles: Readonly<Record<string, string>> = { apa, "chicago-author-date": chicago };
const locales = localesOf([["en-US", american]]);

function of(style: string, items: readonly CslItem[]): References {
  return referencesIn({ style: styles[style] ?? "", locales, language: "en-US" }, items);
}

interface Alone {
  readonly style: string;
  readonly item: CslItem;
  readonly locator: string | null;
}

/** `cite.format`: one record alone, in every form. */
function format(input: unknown): unknown {
  const { style, item, locator } = input as Alone;
  const references = of(style, [item]);
  const cite = { id: item.id };
  return {
    parenthetical: plainOf(references.cited([cite])),
    narrative: plainOf(references.narrative(cite)),
    yearOnly: plainOf(references.yearOnly(cite)),
    reference: plainOf(references.reference(item.id)),
    referenceHtml: htmlOf(references.reference(item.id)),
    ...(locator === null ? {} : { withLocator: plainOf(references.cited([{ ...cite, at: locator }])) }),
  };
}

interface Whole {
  readonly style: string;
  readonly items: readonly CslItem[];
  readonly document: string;
}

/**
 * `cite.bibliography`: a text whose citations stand in the oracle's notation, `[@key, locator; @key]` in parentheses,
 * `[-@key]` without the name and a bare `@key` as part of the sentence, and the bibliography of all records.
 */
function bibliography(input: unknown): unknown {
  const { style, items, document } = input as Whole;
  const references = of(style, items);
  const cited = (_: string, inside: string | undefined, narrative: string | undefined): string => {
    if (narrative !== undefined) return plainOf(references.narrative({ id: narrative }));
    if (inside?.startsWith("-@")) return plainOf(references.yearOnly({ id: inside.slice(2) }));
    const cites = (inside ?? "").split(";").map((part) => {
      const [, id = "", at] = /^\s*@([\w-]+)(?:,\s*(.+))?$/.exec(part) ?? [];
      return at === undefined ? { id } : { id, at };
    });
    return plainOf(references.cited(cites));
  };
  return {
    paragraphs: document.split("\n\n").map((text) => text.replace(/\[(-?@[^\]]+)\]|@([\w-]+)/g, cited)),
    bibliography: references.bibliography().map((entry) => plainOf(entry.runs)),
  };
}

/** The methods of references in a citation style. */
export const references: Methods = { "cite.format": format, "cite.bibliography": bibliography };
