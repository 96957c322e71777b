import type { CitationStyle } from "../../../../read/bibliography/style/style.ts";
import { localesFor } from "../../../../write/references/locales/locales.ts";
import { referencesIn, StyleFails } from "../../../../write/references/references.ts";
import type { References } from "../../../../write/references/references.ts";
import type { Runs } from "../../../../write/references/runs.ts";
import { shippedStyle } from "../../../../write/references/shipped-styles.ts";
import type { ReferenceAsked, ReferenceTold } from "./messages.ts";

/** The style at work, kept for the next reference: reading one takes longer than writing with it. */
let kept: { readonly of: string; readonly references: Promise<References> } | null = null;

self.onmessage = async ({ data: { number, reference } }: MessageEvent<ReferenceAsked>) => {
  const told: ReferenceTold = await written(reference).then(
    (runs) => ({ number, runs }),
    (error: unknown) => {
      if (!(error instanceof StyleFails)) throw error;
      kept = null;
      return { number, trouble: error.message };
    },
  );
  self.postMessage(told);
};

async function written({ key, style, language, items }: ReferenceAsked["reference"]): Promise<Runs> {
  const of = JSON.stringify([style, language]);
  if (kept?.of !== of) kept = { of, references: begun(style, language) };
  const references = await kept.references;
  references.update(items);
  return references.reference(key);
}

async function begun(style: CitationStyle, language: string): Promise<References> {
  const text = "shipped" in style ? await shippedStyle(style.shipped) : style.text;
  return referencesIn({ style: text, locales: await localesFor(text, language), language }, []);
}
