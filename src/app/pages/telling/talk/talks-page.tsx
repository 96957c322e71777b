import { useState } from "react";
import { Link } from "wouter";
import type { TalksPage as Data } from "../../../../show/telling/talk/page.ts";
import { pathOf, underLens } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { talkWords as words } from "../../../words/telling/talk.ts";

/** The talks of a corpus, and the way to a first one. */
export function TalksPage({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  return (
    <article className="talks-page">
      <h1>{words.title}</h1>
      <p className="lead">{words.lead}</p>
      {page.talks.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul className="talks">
          {page.talks.map(({ id, title, steps }) => (
            <li key={id}>
              <Link href={underLens(pathOf("talk", id), asOf)} className="sentence">
                <bdi>{title}</bdi>
              </Link>{" "}
              <span className="quiet">{words.steps(steps)}</span>
            </li>
          ))}
        </ul>
      )}
      <Propose page={page} asOf={asOf} />
    </article>
  );
}

function Propose({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  const desk = useDesk();
  const [question, setQuestion] = useState<string | null>(null);
  const [shown, setShown] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [made, setMade] = useState<string | null>(null);
  const chosen = page.proposed.find((one) => one.question === question) ?? page.proposed[0];
  const { readOnly } = desk.state;
  const keep = async (): Promise<void> => {
    if (chosen === undefined) return;
    setTrouble(null);
    const saved = await desk.save({ do: "add", list: "talks", records: [chosen.talk] });
    if ("done" in saved) {
      setShown(false);
      setMade(saved.made[0] ?? null);
    } else setTrouble("problem" in saved ? saved.problem : words.none);
  };
  return (
    <section aria-labelledby="propose">
      <h2 id="propose">{words.proposeTitle}</h2>
      {chosen === undefined ? (
        <p>{words.noQuestion}</p>
      ) : (
        <>
          <p>{words.proposeLead}</p>
          <p className="ways">
            {page.proposed.length > 1 && (
              <label>
                {words.about}{" "}
                <select
                  value={chosen.question}
                  onChange={(event) => {
                    setQuestion(event.target.value);
                    setShown(false);
                  }}
                >
                  {page.proposed.map((one) => (
                    <option key={one.question} value={one.question}>
                      {one.text}
                    </option>
                  ))}
                </select>
              </label>
            )}
            <button type="button" onClick={() => setShown(true)} aria-expanded={shown}>
              {words.propose}
            </button>
          </p>
          {shown && <Steps talk={chosen.talk} />}
          {shown && readOnly === null && (
            <p className="ways">
              <button type="button" className="first" onClick={() => void keep()}>
                {words.save}
              </button>
              <button type="button" onClick={() => setShown(false)}>
                {words.drop}
              </button>
            </p>
          )}
          {readOnly !== null && readOnly !== "" && <p role="note">{words.readOnly(readOnly)}</p>}
        </>
      )}
      <div aria-live="polite">
        {made !== null && (
          <p className="kept">
            {words.kept} <Link href={underLens(pathOf("talk", made), asOf)}>{words.present}</Link>
          </p>
        )}
        {trouble !== null && <p className="trouble">{trouble}</p>}
      </div>
    </section>
  );
}

/** The steps of a proposed talk, by their sentences. */
function Steps({ talk }: { readonly talk: Data["proposed"][number]["talk"] }) {
  const { steps } = talk;
  const all = Array.isArray(steps) ? (steps as readonly Readonly<Record<string, unknown>>[]) : [];
  return (
    <ol className="proposed" aria-label={words.proposed}>
      {all.map((step, at) => (
        <li key={at} dir="auto">
          {typeof step["text"] === "string" ? step["text"] : ""}
        </li>
      ))}
    </ol>
  );
}
