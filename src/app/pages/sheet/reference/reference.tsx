import type { ReactNode } from "react";
import type { ReferenceOf } from "../../../../show/pages/sheet.ts";
import type { Run } from "../../../../write/references/runs.ts";
import { referenceWords } from "../../../words/sheet/reference.ts";
import { useReference } from "./writing.ts";

/** How a source is cited in the style of the corpus, to be taken over into a text. */
export function Reference({ reference }: { readonly reference: ReferenceOf }) {
  const told = useReference(reference);
  const { style, key, items } = reference;
  const language = items.find((one) => one.id === key)?.language;
  return (
    <section className="reference">
      <h2 className="label">{referenceWords.title}</h2>
      {told === null && <p className="quiet">{referenceWords.writing}</p>}
      {told !== null && "runs" in told && told.runs.length === 0 && <p>{referenceWords.nothing}</p>}
      {told !== null && "runs" in told && told.runs.length > 0 && (
        <p className="sentence" dir="auto" {...(language === undefined ? {} : { lang: language })}>
          {told.runs.map((run, place) => (
            <Stretch key={place} run={run} />
          ))}
        </p>
      )}
      {told !== null && "trouble" in told && <p>{referenceWords.trouble(told.trouble)}</p>}
      <p className="quiet">{referenceWords.style("shipped" in style ? style.shipped : style.file)}</p>
    </section>
  );
}

/** A stretch of a citation or a reference in its look. */
export function Stretch({ run }: { readonly run: Run }) {
  let text: ReactNode = run.text;
  if (run.raised !== undefined) text = run.raised === "above" ? <sup>{text}</sup> : <sub>{text}</sub>;
  if (run.smallCaps) text = <span className="small-caps">{text}</span>;
  if (run.underlined) text = <u>{text}</u>;
  if (run.bold) text = <strong>{text}</strong>;
  if (run.italic) text = <em>{text}</em>;
  return run.href === undefined ? (
    text
  ) : (
    <a href={run.href} target="_blank" rel="noreferrer">
      {text}
    </a>
  );
}
