import { useEffect, useState } from "react";
import { draftIn } from "../../../../show/map/arguing/draft.ts";
import { keepAtDesk, keptAtDesk } from "../../../desk/drafts.ts";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { useNames } from "../asking.ts";
import { beginning, takeInHand, useInHand } from "../hand.ts";
import type { Hand } from "../hand.ts";
import { places, toPlace } from "../ways.ts";

/** Arguments that were begun and not saved: to go on with, or to throw away. */
export function ArgumentDrafts() {
  const [drafts, setDrafts] = useState<readonly Hand[]>([]);
  const hand = useInHand();
  const inHand = hand?.name ?? null;
  useEffect(() => {
    let left = false;
    void keptAtDesk(beginning).then((kept) => {
      const found = kept.flatMap(({ name, value }): readonly Hand[] => {
        const draft = draftIn(value);
        return draft ? [{ name, draft }] : [];
      });
      if (!left) setDrafts(found);
    });
    return () => void (left = true);
  }, [inHand]);
  const aims = drafts.flatMap(({ draft: { aim } }) =>
    aim.to === "claim" ? [aim.id] : aim.to === "against" ? aim.ids : [],
  );
  const names = useNames(aims);
  const shown = drafts.filter(({ name }) => name !== inHand);
  if (shown.length === 0) return null;
  const labelOf = ({ draft: { aim, because, text } }: Hand): string => {
    const id = aim.to === "claim" ? aim.id : aim.to === "against" ? (aim.ids[0] ?? "") : "";
    const named = names?.[id];
    const leads = aim.to === "new" ? aim.text : named ? inReadersWords(named.label) : text;
    return words.draftOf(because.length, leads.trim().slice(0, 90));
  };
  return (
    <section className="floor-list">
      <h2 className="label">{words.drafts}</h2>
      <ul>
        {shown.map((one) => (
          <li key={one.name}>
            <p className="sentence" dir="auto">
              {labelOf(one)}
            </p>
            <p className="does">
              <button
                type="button"
                aria-label={words.ofOne(words.goOn, labelOf(one))}
                onClick={() => {
                  takeInHand(one.draft, one.name);
                  toPlace(places.head);
                }}
              >
                {words.goOn}
              </button>
              <button
                type="button"
                className="plain"
                aria-label={words.throwAwayOne(labelOf(one))}
                onClick={() => {
                  keepAtDesk(one.name, null);
                  setDrafts((before) => before.filter((other) => other !== one));
                }}
              >
                {words.drop}
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
