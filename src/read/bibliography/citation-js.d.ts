declare module "@citation-js/core" {
  export const plugins: {
    readonly input: { readonly data: (input: unknown, type: string) => unknown };
    readonly config: { readonly get: (plugin: string) => unknown };
  };
}

declare module "@citation-js/plugin-bibtex" {}

declare module "@citation-js/plugin-ris" {}
