import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import type { ListName } from "../../../read/grammar/field.ts";
import { leadingTo, nothingInHand, withPremise } from "../../../show/map/arguing/draft.ts";
import { listCalled, rolesOf } from "../../../show/map/arguing/roles.ts";
import { underLens } from "../../address.ts";
import { askArguing, useNames } from "../../map/arguing/asking.ts";
import { takeInHand } from "../../map/arguing/hand.ts";
import { keepDraft } from "../../pages/sheet/form/drafts.ts";
import { newPath } from "../../pages/sheet/form/paths.ts";
import { RecordLink } from "../../parts/link.tsx";
import { floorWords as words } from "../../words/arguing/floor.ts";
import { useDesk } from "../desk.tsx";
import { dropQuestion, keptQuestions, whenKept } from "./floor.ts";
import type { KeptQuestion } from "./floor.ts";

interface Props {
  readonly asOf: number | null;
}

/** Questions from the floor that wait to be worked in: each as a question, a claim, an argument, or a note. */
export function FloorList({ asOf }: Props) {
  const [kept, setKept] = useState<readonly KeptQuestion[]>([]);
  const [trouble, setTrouble] = useState("");
  const desk = useDesk();
  const [, go] = useLocation();
  const names = useNames(kept.flatMap(({ about }) => about ?? []));
  useEffect(() => {
    let left = false;
    const look = async (): Promise<void> => {
      const found = await keptQuestions();
      if (!left) setKept(found);
    };
    void look();
    const stop = whenKept(() => void look());
    return () => {
      left = true;
      stop();
    };
  }, []);
  if (kept.length === 0) return null;
  const drop = (one: KeptQuestion): void => {
    dropQuestion(one);
    setKept((before) => before.filter((other) => other !== one));
  };
  /** Its words go into a form, which is a draft of its own from then on. */
  const toForm = (one: KeptQuestion, list: ListName, singular: string): void => {
    const at = newPath(list, { text: one.text });
    const form = { list, id: null, seen: null, entered: { text: one.text } };
    keepDraft(at, { title: null, singular, form }, true);
    drop(one);
    go(at);
  };
  const toArgument = (one: KeptQuestion): void => {
    const kind = one.about === null ? undefined : names?.[one.about]?.kind;
    const roles = rolesOf(listCalled(typeof kind === "string" ? kind : (kind?.say ?? "")));
    const bare = { ...nothingInHand, text: one.text };
    const { about } = one;
    takeInHand(
      about === null
        ? bare
        : roles.conclusion
          ? leadingTo(bare, about)
          : roles.premise
            ? withPremise(bare, about)
            : bare,
    );
    drop(one);
    go(underLens(about === null ? "/map" : `/map?focus=${encodeURIComponent(about)}`, asOf));
  };
  const toNote = async (one: KeptQuestion): Promise<void> => {
    const action = one.about === null ? null : await askArguing("note", { id: one.about, text: one.text });
    if (!action) return setTrouble(words.noteGone);
    const saved = await desk.save(action);
    if ("done" in saved) drop(one);
    else setTrouble("problem" in saved ? saved.problem : words.noteGone);
  };
  return (
    <section className="floor-list">
      <h2 className="label">{words.list}</h2>
      {trouble !== "" && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      <ul>
        {kept.map((one) => {
          const about = one.about === null ? undefined : names?.[one.about];
          const ways: readonly (readonly [string, () => void])[] = [
            [words.asQuestion, () => toForm(one, "questions", "question")],
            [words.asClaim, () => toForm(one, "claims", "claim")],
            [words.asArgument, () => toArgument(one)],
            ...(about ? [[words.asNote, () => void toNote(one)] as const] : []),
          ];
          return (
            <li key={one.name}>
              <p className="sentence" dir="auto">
                {one.text}
              </p>
              {about && one.about !== null && (
                <p className="quiet">
                  <RecordLink id={one.about} text={about.label} asOf={asOf} />
                </p>
              )}
              <p className="does">
                <span className="quiet">{words.workIn}</span>
                {ways.map(([name, run]) => (
                  <button key={name} type="button" aria-label={words.work(name, one.text)} onClick={run}>
                    {name}
                  </button>
                ))}
                <button
                  type="button"
                  className="plain"
                  aria-label={words.dropOne(one.text)}
                  onClick={() => drop(one)}
                >
                  {words.drop}
                </button>
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
