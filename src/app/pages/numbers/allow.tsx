import { useState } from "react";
import { writtenOut } from "../../../base/text/steering.ts";
import type { PluginFile } from "../../../read/source-file.ts";
import { allowPlugin } from "../../model/corpus.ts";
import { numberWords } from "../../words/shown/numbers.ts";

/** A plug-in that came with the corpus, to be read and then allowed: nothing of it runs before that. */
export function Allow({ file: { name, file, hash, text } }: { readonly file: PluginFile }) {
  const [asking, setAsking] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const allow = (): void => {
    setAsking(true);
    void allowPlugin(name, hash).then((why) => {
      setTrouble(why);
      setAsking(false);
    });
  };
  return (
    <section className="allow">
      <h2 className="label">{numberWords.allow.title}</h2>
      <p>{numberWords.allow.what}</p>
      <dl>
        <div>
          <dt>{numberWords.allow.file}</dt>
          <dd>{file}</dd>
        </div>
        <div>
          <dt>SHA-256</dt>
          <dd className="hash">{hash}</dd>
        </div>
      </dl>
      <textarea
        aria-label={numberWords.allow.code}
        dir="ltr"
        rows={16}
        wrap="off"
        readOnly
        value={writtenOut(text)}
      />
      <p className="save">
        <button type="button" onClick={allow} disabled={asking}>
          {numberWords.allow.allow}
        </button>
        <output className="quiet">{trouble}</output>
      </p>
    </section>
  );
}
