import type { Suggested as Kind } from "../../../show/plan/page.ts";
import { suggestions } from "../../../show/plan/wording.ts";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { Look } from "./look.tsx";

interface Props {
  readonly kinds: readonly Kind[];
  readonly passedOver: number;
  readonly at: string | null;
  readonly goTo: (id: string | null) => void;
  readonly costsIn: string;
  readonly asOf: number | null;
}

/** As many of each kind are shown; the others are folded. */
const first = 3;

/** What the record itself suggests to look at, by the reason for it. */
export function Suggested({ kinds, passedOver, ...rest }: Props) {
  if (kinds.length === 0) return null;
  return (
    <section className="suggested">
      <h2>{words.suggested}</h2>
      <p className="quiet">{words.suggestedLead}</p>
      {kinds.map(({ kind, lines }) => {
        const list = (from: number, to?: number) => (
          <ul className="looks-at">
            {lines.slice(from, to).map((line) => (
              <Look
                key={line.id}
                line={line}
                why={{
                  evidence: line.evidence,
                  word: inReadersWords(suggestions[kind].about),
                  about: line.about,
                }}
                place={null}
                folded
                level={4}
                {...rest}
              />
            ))}
          </ul>
        );
        return (
          <section key={kind}>
            <h3>{inReadersWords(suggestions[kind].title)}</h3>
            <p className="quiet">{inReadersWords(suggestions[kind].because)}</p>
            {list(0, first)}
            {lines.length > first && (
              <details className="rest">
                <summary>{words.more(lines.length - first)}</summary>
                {list(first)}
              </details>
            )}
          </section>
        );
      })}
      {passedOver > 0 && <p className="quiet">{words.passedOver(passedOver)}</p>}
    </section>
  );
}
