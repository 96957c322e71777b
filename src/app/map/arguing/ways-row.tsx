import { useEffect, useState } from "react";
import type { Id } from "../../../base/finding.ts";
import { listCalled } from "../../../show/map/arguing/roles.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { askArguing, useNames } from "./asking.ts";
import type { About } from "./ways.ts";
import { useArguingKeys, waysFor } from "./ways.ts";
import { useInHand } from "./hand.ts";
import { arguingWords as words } from "../../words/arguing/arguing.ts";

/** Buttons for what can be done with a record in an argument. */
export function Ways({ about, label }: { readonly about: About; readonly label?: string }) {
  const hand = useInHand();
  return waysFor(about, hand?.draft ?? null).map(({ name, key, run, on }) => (
    <button
      key={key + name}
      type="button"
      aria-keyshortcuts={label === undefined ? key : undefined}
      aria-label={label === undefined ? undefined : words.ofOne(name, label)}
      className={on === true ? "taken" : undefined}
      onClick={run}
    >
      {name}
    </button>
  ));
}

interface OnPage {
  readonly id: Id;
  /** What a record of its kind is called, where the page knows it. */
  readonly kind?: string;
  /** Whether the record is named before the buttons: on a page of many. */
  readonly named?: boolean;
}

/** A row of these buttons for a record of the page, with their keys; nothing for one that no argument names. */
export function ArguingOn({ id, kind, named = false }: OnPage) {
  const about = useAbout(id, kind);
  useArguingKeys(() => about);
  const hand = useInHand();
  const names = useNames(named ? [id] : []);
  if (about === null || waysFor(about, hand?.draft ?? null).length === 0) return null;
  const label = names?.[id]?.label;
  return (
    <p className={named ? "arguing-ways at-hand" : "crossing arguing-ways"}>
      {named && label !== undefined && (
        <span className="sentence" dir="auto">
          {inReadersWords(label)}
        </span>
      )}
      <Ways about={about} />
    </p>
  );
}

/** What arguing asks of a record: its list, and whether it answers a question. */
function useAbout(id: Id, known: string | undefined): About | null {
  const names = useNames(known === undefined ? [id] : []);
  const asked = names?.[id]?.kind;
  const list = listCalled(known ?? (typeof asked === "string" ? asked : (asked?.say ?? "")));
  const [answers, setAnswers] = useState<Id | null>(null);
  const claim = list === "claims" ? id : null;
  useEffect(() => {
    let left = false;
    if (claim !== null)
      void askArguing("question", claim).then((question) => {
        if (!left) setAnswers(question === null ? null : claim);
      });
    return () => void (left = true);
  }, [claim]);
  return list === null ? null : { id, list, answer: answers !== null && answers === id };
}
