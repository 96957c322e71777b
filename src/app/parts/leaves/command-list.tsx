import { useLayoutEffect, useRef, useState } from "react";
import type { KeyboardEvent } from "react";
import { folded, tokensOf } from "../../../show/search/fold.ts";
import { keyWords, searchWords as words } from "../../words/search.ts";
import { declaredActions } from "../actions.tsx";
import type { Action } from "../actions.tsx";
import { Leaf } from "./leaf.tsx";

interface Props {
  readonly onShut: () => void;
  /** Told what is to be done once the list is shut. */
  readonly choose: (run: () => void) => void;
}

/** Everything that can be done on this page, narrowed by words; Enter in the field does the first of it. */
export function CommandList({ onShut, choose }: Props) {
  const [groups] = useState(() =>
    declaredActions().map((group) => ({
      title: group.title,
      actions: group.actions.filter((one) => one.run !== null && one.name !== words.commands),
    })),
  );
  const [filter, setFilter] = useState("");
  const form = useRef<HTMLFormElement>(null);
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => field.current?.focus(), []);

  const wanted = tokensOf(filter).map((token) => token.folded);
  const shown = groups
    .map((group) => ({
      title: group.title,
      actions: group.actions.filter((one) => wanted.every((word) => named(one, group.title).includes(word))),
    }))
    .filter((group) => group.actions.length > 0);

  const count = shown.reduce((sum, group) => sum + group.actions.length, 0);

  const onKey = (event: KeyboardEvent): void => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const stops = [...(form.current?.querySelectorAll<HTMLElement>("input, button") ?? [])];
    stops[stops.findIndex((one) => one === document.activeElement) + step]?.focus();
  };
  return (
    <Leaf title={words.commandsTitle} onShut={onShut}>
      <form
        method="dialog"
        ref={form}
        onSubmit={(event) => {
          if (shown.length === 0) event.preventDefault();
        }}
      >
        <label className="filter">
          {words.narrow}
          <input
            type="text"
            autoComplete="off"
            ref={field}
            value={filter}
            onChange={(event) => setFilter(event.target.value)}
            onKeyDown={onKey}
          />
        </label>
        <output className="quiet">{wanted.length > 0 && words.fitting(count)}</output>
        {shown.map((group) => (
          <section key={group.title}>
            <h3 className="label">{group.title}</h3>
            <ul>
              {group.actions.map((action) => (
                <li key={action.name}>
                  <button
                    type="submit"
                    onKeyDown={onKey}
                    onClick={() => {
                      if (action.run) choose(action.run);
                    }}
                  >
                    <span>{action.name}</span>
                    <Key name={action.key} />
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </form>
    </Leaf>
  );
}

/** A key as it is written on it. */
export function Key({ name }: { readonly name: string | null }) {
  return name === null ? null : <kbd>{keyWords[name] ?? name}</kbd>;
}

function named(action: Action, title: string): string {
  return `${title} ${action.name}`.split(" ").map(folded).join(" ");
}
