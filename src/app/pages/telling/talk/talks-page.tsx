import { useState } from "react";
import { Link } from "wouter";
import type { TalksPage as Data } from "../../../../show/telling/talk/page.ts";
import { pathOf, underLens } from "../../../address.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { talkWords as words } from "../../../words/telling/talk.ts";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** The talks of a corpus, and the way to a first one. */
export function TalksPage({ page, address }: Props) {
  const { asOf } = address;
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
      <Propose page={page} address={address} />
    </article>
  );
}

/** A first talk is worked out for one question, when it is asked for; which, stands in the address. */
function Propose({ page, address }: Props) {
  const desk = useDesk();
  const { asOf, query, toLook } = address;
  const [chosen, setChosen] = useState(query.get("propose"));
  const [trouble, setTrouble] = useState<string | null>(null);
  const [made, setMade] = useState<string | null>(null);
  const question = page.questions.find(({ id }) => id === chosen) ?? page.questions[0];
  const talk = page.proposed?.question === question?.id ? page.proposed?.talk : undefined;
  const propose = (id: string | null): void => toLook({ propose: id }, "replace");
  const { readOnly } = desk.state;
  const keep = async (): Promise<void> => {
    if (talk === undefined) return;
    setTrouble(null);
    const saved = await desk.save({ do: "add", list: "talks", records: [talk] });
    if ("done" in saved) {
      propose(null);
      setMade(saved.made[0] ?? null);
    } else setTrouble("problem" in saved ? saved.problem : words.none);
  };
  return (
    <section aria-labelledby="propose">
      <h2 id="propose">{words.proposeTitle}</h2>
      {question === undefined ? (
        <p>{words.noQuestion}</p>
      ) : (
        <>
          <p>{words.proposeLead}</p>
          <p className="ways">
            {page.questions.length > 1 && (
              <label>
                {words.about}{" "}
                <select
                  value={question.id}
                  onChange={(event) => {
                    setChosen(event.target.value);
                    propose(null);
                  }}
                >
                  {page.questions.map(({ id, text }) => (
                    <option key={id} value={id}>
                      {text}
                    </option>
                  ))}
                </select>
              </label>
            )}
            <button type="button" onClick={() => propose(question.id)} aria-expanded={talk !== undefined}>
              {words.propose}
            </button>
          </p>
          {talk !== undefined && <Steps talk={talk} />}
          {talk !== undefined && readOnly === null && (
            <p className="ways">
              <button type="button" className="first" onClick={() => void keep()}>
                {words.save}
              </button>
              <button type="button" onClick={() => propose(null)}>
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
function Steps({ talk }: { readonly talk: NonNullable<Data["proposed"]>["talk"] }) {
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
