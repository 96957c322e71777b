import { useEffect, useState } from "react";
import { Link } from "wouter";
import { useDesk } from "../../../desk/desk.tsx";
import { formWords as words } from "../../../words/desk/forms.ts";
import { deskDrafts, keepDraft } from "./drafts.ts";
import type { Draft } from "./drafts.ts";

/** Forms that were begun and not saved: to go on with, or to throw away. */
export function DraftList() {
  const [drafts, setDrafts] = useState<readonly Draft[]>([]);
  const writable = useDesk().state.readOnly === null;
  useEffect(() => {
    let stale = false;
    void deskDrafts().then((found) => {
      if (!stale) setDrafts(found);
    });
    return () => {
      stale = true;
    };
  }, []);
  if (drafts.length === 0) return null;
  return (
    <section className="drafts">
      <h2 className="label">{words.drafts}</h2>
      <p className="quiet">{words.draftsWhy}</p>
      <ul className="index">
        {drafts.map((draft) => (
          <li key={draft.at}>
            <span className="sentence">
              <Link href={draft.at} dir="auto">
                {titleOf(draft)}
              </Link>
            </span>
            {writable && (
              <button
                type="button"
                aria-label={words.throwAway(titleOf(draft))}
                onClick={() => {
                  keepDraft(draft.at, null, true);
                  setDrafts((before) => before.filter((one) => one !== draft));
                  document.getElementById("page")?.focus();
                }}
              >
                {words.drop}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a draft is of, with the first words that stand in it. */
function titleOf({ title, singular, form }: Draft): string {
  if (title !== null) return words.changing(title);
  const said = ["text", "name", "title", "method", "words", "dimension"].flatMap((name) => {
    const value = Object.hasOwn(form.entered, name) ? form.entered[name] : undefined;
    return typeof value === "string" && value.trim() !== "" ? [value.trim().slice(0, 80)] : [];
  });
  return said[0] === undefined ? words.new(singular) : `${words.new(singular)}: ${said[0]}`;
}
