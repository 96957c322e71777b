import { useLayoutEffect, useRef, useState } from "react";
import type { KeyboardEvent } from "react";
import type { StockKind } from "../../../show/pages/contents.ts";
import type { Found } from "../../../show/search/found.ts";
import type { useAddress } from "../../address.ts";
import { useActions } from "../../parts/actions.tsx";
import { searchWords as words } from "../../words/search.ts";
import { yearIn } from "../../words/index.ts";
import { NothingYet, Unknown } from "./empty.tsx";
import { searchField } from "./field.tsx";
import { Group } from "./hits.tsx";
import { useFound } from "./searching.ts";

interface Props {
  readonly index: readonly StockKind[];
  readonly address: ReturnType<typeof useAddress>;
}

/** Hits of each kind that are shown at first, and of one kind alone. */
const few = 6;
const many = 200;

/** The search: a field, and what the whole corpus has of its words, by kind, the best first. */
export function SearchPage({ index, address }: Props) {
  const { asOf, query, toLook } = address;
  const given = query.get("q") ?? "";
  const kind = query.get("in");
  const [text, setText] = useState(given);
  const [before, setBefore] = useState(given);
  const field = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const told = useFound(text, kind === null ? few : many, kind);
  const found = told?.found.text === text ? told.found : null;

  useLayoutEffect(() => field.current?.focus(), []);
  // Back, forward and links change the address under the field.
  if (given !== before) {
    setBefore(given);
    setText(given);
  }
  useActions(words.search, [{ name: words.help, key: "Arrow keys", run: null, own: true }]);

  const type = (next: string): void => {
    setText(next);
    toLook({ q: next === "" ? null : next, in: null }, "replace");
  };
  const onKey = (event: KeyboardEvent): void => {
    const links = [...(list.current?.querySelectorAll<HTMLElement>("a.hit") ?? [])];
    const at = links.findIndex((link) => link === document.activeElement);
    const to = placeAfter(event.key, at, links.length);
    if (to === null) return;
    event.preventDefault();
    if (to < 0) field.current?.focus();
    else links[to]?.focus();
  };

  return (
    <div className="search">
      <h1>{words.search}</h1>
      <search>
        <form onSubmit={(event) => event.preventDefault()}>
          <label className="unseen" htmlFor={searchField.id}>
            {words.field}
          </label>
          <input
            {...searchField}
            dir="auto"
            ref={field}
            value={text}
            onChange={(event) => type(event.target.value)}
            onKeyDown={onKey}
          />
        </form>
      </search>
      <output className="told">
        {text.trim() !== "" && <p>{found ? summary(found) : words.waiting}</p>}
        {found?.cut === true && <p className="quiet">{words.cut}</p>}
        {told !== null && text.trim() !== "" && told.done < told.of && (
          <p className="quiet">{words.reading(told.done, told.of)}</p>
        )}
        {asOf !== null && <p className="quiet">{words.wholeCorpus(yearIn(asOf))}</p>}
      </output>
      {text.trim() === "" && <NothingYet index={index} asOf={asOf} />}
      {found && <Unknown found={found} asOf={asOf} />}
      <div ref={list}>
        {(text.trim() !== "" || kind !== null) &&
          found?.groups
            .filter((group) => kind === null || group.kind === kind)
            .map((group) => (
              <Group
                key={group.kind}
                group={group}
                text={text}
                only={kind}
                index={index}
                asOf={asOf}
                onKey={onKey}
              />
            ))}
      </div>
    </div>
  );
}

/** Where a key leads among so many hits; -1 is the field above them, null nowhere. */
function placeAfter(key: string, at: number, count: number): number | null {
  if (key === "ArrowDown") return Math.min(at + 1, count - 1);
  if (at < 0) return null;
  if (key === "ArrowUp") return at - 1;
  if (key === "Home") return 0;
  if (key === "End") return count - 1;
  return key === "Escape" ? -1 : null;
}

function summary(found: Found): string {
  const { count, slips } = found;
  if (found.match === "all") {
    if (slips === count) return words.slipsAlone(count);
    return [words.all(count - slips), slips > 0 ? words.slips(slips) : ""].join(" ");
  }
  return found.match === "some" ? words.some(count) : words.none;
}
