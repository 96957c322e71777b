import { useRef, useState } from "react";
import { Link, useLocation } from "wouter";
import { underLens } from "../../address.ts";
import { useActions } from "../../parts/actions.tsx";
import { searchWords as words } from "../../words/search.ts";
import { beginSearch } from "./searching.ts";

/** The path of a search. */
export function searchPath(text: string, kind: string | null = null): string {
  const query = new URLSearchParams({ q: text, ...(kind === null ? {} : { in: kind }) });
  return `/search?${query.toString()}`;
}

const fieldId = "search-field";

/** The name by which the one search field in sight is known. */
export const searchField = { id: fieldId, type: "search", autoComplete: "off", spellCheck: false } as const;

/** The search field at the side; on the search's own page, where a wider one stands, its name alone. */
export function SearchField({ here, asOf }: { readonly here: boolean; readonly asOf: number | null }) {
  const [text, setText] = useState("");
  const [, go] = useLocation();
  const before = useRef<Element | null>(null);

  const toField = (): void => {
    before.current = document.activeElement;
    const field = document.getElementById(fieldId);
    if (!(field instanceof HTMLInputElement)) return;
    field.focus();
    field.select();
  };
  useActions(words.everywhere, [{ name: words.search, key: "/", run: toField }], "everywhere");

  if (here)
    return (
      <p className="search-side">
        <Link href={underLens("/search", asOf)} aria-current="page">
          {words.search}
        </Link>
      </p>
    );
  return (
    <search className="search-side">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          setText("");
          go(underLens(searchPath(text), asOf));
        }}
      >
        <label className="unseen" htmlFor={fieldId}>
          {words.field}
        </label>
        <input
          {...searchField}
          dir="auto"
          placeholder={words.search}
          value={text}
          onChange={(event) => setText(event.target.value)}
          onFocus={() => beginSearch()}
          onKeyDown={(event) => {
            if (event.key !== "Escape") return;
            event.preventDefault();
            setText("");
            if (before.current instanceof HTMLElement && before.current !== document.body)
              before.current.focus();
            else event.currentTarget.blur();
          }}
        />
      </form>
    </search>
  );
}
