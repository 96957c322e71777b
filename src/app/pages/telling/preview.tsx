import { useMemo } from "react";
import { words as general } from "../../words/index.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { tellingWords as words } from "../../words/telling/telling.ts";
import type { TellingPage } from "../../worker/planning/telling.ts";
import { useSetting } from "./set/setting.ts";
import { WholeText } from "./text/blocks.tsx";
import type { Leading } from "./text/line.tsx";

/** A text as it now reads, and again whenever the corpus changes. */
export function PreviewOf({ page, asOf }: { readonly page: TellingPage; readonly asOf: number | null }) {
  const { preview, previewed, pending, progress, years } = page;
  // The same text comes anew whenever the page is made again: it is set again only when it says something else.
  const asking = useMemo(() => JSON.stringify(preview), [preview]);
  const kept = useMemo(() => JSON.parse(asking) as typeof preview, [asking]);
  const { set, trouble, behind } = useSetting(kept);
  const { computations, language = "en" } = kept?.manuscript ?? {};
  const leading: Leading = useMemo(
    () => ({ derivations: new Map(computations?.map((one) => [one.run, one.derivation])), asOf, language }),
    [computations, asOf, language],
  );
  return (
    <section className="preview" aria-busy={behind}>
      <h2 className="label">{words.preview}</h2>
      <output className="quiet">
        {[
          ...(pending > 0 ? [general.computing(pending)] : []),
          ...(years !== null ? [words.course(years.done, years.of)] : []),
          ...(progress !== null ? [words.planning] : []),
          ...(set === null && behind && trouble === null ? [words.working] : []),
        ].join(" · ") || words.inEnglish}
      </output>
      {previewed !== null && (
        <p>
          {words.firstOf(page.questions.length)} <bdi>{inReadersWords(previewed.text)}</bdi>
        </p>
      )}
      {trouble !== null && <p role="alert">{words.trouble(trouble)}</p>}
      {kept === null && pending === 0 && progress === null && <p>{words.noText}</p>}
      {set !== null && trouble === null && <WholeText set={set} leading={leading} />}
    </section>
  );
}
