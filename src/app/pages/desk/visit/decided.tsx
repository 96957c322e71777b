import { useId } from "react";
import type { VisitSheet } from "../../../../show/desk/visit/sheet/sheet.ts";
import { decidedWords } from "../../../../show/desk/visit/blocks/after.ts";
import type { VisitPage } from "../../../worker/planning/visit.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";

interface Props {
  readonly sheet: VisitSheet;
  readonly found: Readonly<Record<string, string>>;
  readonly choose: (examination: string, outcome: string) => void;
}

/** What each outcome would decide, folded away until it is asked for, and which of them was found. */
export function After({ sheet, found, choose }: Props) {
  const asked = sheet.examinations.filter((one) => one.outcomes.length > 0);
  const name = useId();
  if (asked.length === 0) return null;
  return (
    <section>
      <h2>{words.after}</h2>
      <details className="after">
        <summary>{words.afterHelp}</summary>
        <p className="quiet">{words.foundHelp}</p>
        {sheet.looks === null && <p className="quiet">{words.planning}</p>}
        {asked.map(({ id, method, outcomes }) => (
          <fieldset key={id}>
            <legend dir="auto">{inReadersWords(method)}</legend>
            {[...outcomes, null].map((outcome) => {
              const value = outcome?.id ?? "";
              const line = sheet.looks
                ?.find((look) => look.id === id)
                ?.outcomes.find((one) => one.id === value);
              return (
                <div className="came" key={value}>
                  <label>
                    <input
                      type="radio"
                      name={`${name} ${id}`}
                      checked={(Object.hasOwn(found, id) ? found[id] : "") === value}
                      onChange={() => choose(id, value)}
                    />
                    <span className={outcome === null ? undefined : "sentence"} dir="auto">
                      {outcome === null ? words.noneYet : inReadersWords(outcome.text)}
                    </span>
                  </label>
                  {line && (
                    <ul>
                      {decidedWords(line)
                        .map(inReadersWords)
                        .map((one) => (
                          <li key={one}>{one}</li>
                        ))}
                    </ul>
                  )}
                </div>
              );
            })}
          </fieldset>
        ))}
      </details>
    </section>
  );
}

interface DecidedProps {
  readonly before: VisitPage["standings"];
  readonly now: VisitPage["standings"];
  readonly pending: number;
  readonly asOf: number | null;
}

/** The claims that stand differently since the visit came in. */
export function Decided({ before, now, pending, asOf }: DecidedProps) {
  const was = new Map(before.map((one) => [one.id, one.standing]));
  const changed = now.filter((one) => was.has(one.id) && was.get(one.id) !== one.standing);
  return (
    <>
      <h2>{words.decided}</h2>
      {pending > 0 && <p className="quiet">{words.pending}</p>}
      {changed.length === 0 && pending === 0 && <p>{words.undecided}</p>}
      <ul className="decided">
        {changed.map(({ id, text, standing }) => {
          const old = was.get(id);
          return (
            <li key={id}>
              <span className="sentence">
                <RecordLink id={id} text={text} asOf={asOf} />
              </span>{" "}
              {old !== undefined && <StandingMark standing={old} />} <span aria-hidden="true">→</span>{" "}
              <StandingMark standing={standing} />
            </li>
          );
        })}
      </ul>
    </>
  );
}
