import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { InputDeclaration, NumberDeclaration, Plugin } from "../../../../plugin.ts";

/** A plug-in that a number can be made with: what it asks, and what it needs for that. */
export interface Method {
  readonly id: string;
  readonly title: Text;
  readonly doc: Text;
  /** What each input it cannot do without is. */
  readonly needs: readonly Text[];
  /** It came with the corpus, and its user allowed it. */
  readonly guest: boolean;
}

/** Every plug-in that can be used, and the names of those of the corpus that have not been allowed. */
export function methodsOffered(
  graph: Graph,
  plugins: readonly Plugin[],
): { readonly methods: readonly Method[]; readonly notAllowed: readonly string[] } {
  const usable = plugins.filter(({ guest }) => guest === undefined || guest.trouble === null);
  return {
    methods: usable.map(({ id, title, doc, inputs, guest }) => ({
      id,
      title,
      doc,
      needs: inputs.filter(({ optional }) => optional !== true).map((input) => input.doc),
      guest: guest !== undefined,
    })),
    notAllowed: graph.pluginFiles
      .map(({ name }) => name)
      .filter((name) => !plugins.some(({ id }) => id === name)),
  };
}

/** What of a plug-in a form is made from. */
export interface Form {
  readonly id: string;
  readonly title: Text;
  readonly doc: Text;
  readonly inputs: readonly InputDeclaration[];
  readonly numbers: readonly NumberDeclaration[];
}

/** The form of a plug-in; null where there is none of that name. */
export function formOf(plugin: Plugin | undefined): Form | null {
  if (plugin === undefined) return null;
  const { id, title, doc, inputs, numbers } = plugin;
  return { id, title, doc, inputs, numbers };
}
