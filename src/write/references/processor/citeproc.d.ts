declare module "citeproc" {
  /** What the processor asks for: the items by their keys, and the terms of a language. */
  interface Sys {
    readonly retrieveItem: (key: string) => unknown;
    readonly retrieveLocale: (language: string) => string;
  }

  /** One source of a citation; `suppress-author` leaves the year, `author-only` the names. */
  interface CitationItem {
    readonly id: string;
    readonly locator?: string;
    readonly label?: string;
    readonly prefix?: string;
    readonly suffix?: string;
    readonly "suppress-author"?: boolean;
    readonly "author-only"?: boolean;
    /** 1: cited before. */
    readonly position?: number;
    readonly "first-reference-note-number"?: number;
  }

  /** One style at work on a set of items. */
  interface Engine {
    readonly opt: {
      readonly xclass: "in-text" | "note";
      readonly development_extensions: Record<string, boolean>;
    };
    readonly tmp: {
      taintedItemIDs: Record<string, boolean>;
      have_collapsed: boolean;
      splice_delimiter: string;
    };
    readonly citation: { readonly opt: { readonly [name: string]: unknown } };
    readonly registry: { readonly getSortedIds: () => readonly string[] };
    setOutputFormat(name: string): void;
    updateItems(keys: readonly string[]): void;
    makeCitationCluster(items: readonly CitationItem[]): string;
    /** False where the style has no bibliography; `include` takes the items of which one field is as said. */
    makeBibliography(only?: {
      readonly include: readonly { readonly field: string; readonly value: string }[];
    }): readonly [{ readonly entry_ids: readonly (readonly string[])[] }, readonly string[]] | false;
  }

  /** The text between tags of a format, `%%STRING%%` standing for what is inside. */
  type Decoration = string | false | ((engine: Engine, text: string) => string);

  const CSL: {
    readonly Engine: new (sys: Sys, style: string, language?: string) => Engine;
    readonly Output: {
      readonly Formats: {
        prototype?: unknown;
        [name: string]: unknown;
      };
    };
    readonly NUMERIC_VARIABLES: string[];
    getSpliceDelimiter(this: Engine, lastLocator: unknown, lastCollapsed: unknown, place: number): string;
  };
  export default CSL;
  export type { CitationItem, Decoration, Engine, Sys };
}

declare module "*.csl?raw" {
  const text: string;
  export default text;
}

declare module "*.xml?raw" {
  const text: string;
  export default text;
}
