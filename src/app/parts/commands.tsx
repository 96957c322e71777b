import { useRef, useState } from "react";
import { searchWords as words } from "../words/search.ts";
import { useActionKeys, useActions } from "./actions.tsx";
import type { Action } from "./actions.tsx";
import { CommandList } from "./leaves/command-list.tsx";
import { KeyboardMap } from "./leaves/keyboard-map.tsx";
import { toHeading } from "./places/headings.ts";

/** Two buttons at the side, and what they open: the list of all that can be done, and the map of the keys. */
export function Commands() {
  const [open, setOpen] = useState<"commands" | "keys" | null>(null);
  const chosen = useRef<(() => void) | null>(null);
  useActionKeys();
  useActions(
    words.everywhere,
    [
      { name: words.commands, key: ".", run: () => setOpen("commands") },
      { name: words.keys, key: "?", run: () => setOpen("keys") },
      { name: words.nextHeading, key: "h", run: () => toHeading("next") },
      { name: words.headingBefore, key: "H", run: () => toHeading("before") },
    ],
    "everywhere",
  );
  useActions(words.rooms, roomActions, "everywhere");
  const shut = (): void => {
    setOpen(null);
    chosen.current?.();
    chosen.current = null;
  };
  return (
    <p className="commands">
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen("commands")}>
        {words.commands} <kbd>.</kbd>
      </button>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen("keys")}>
        {words.keys} <kbd>?</kbd>
      </button>
      {open === "commands" && <CommandList onShut={shut} choose={(run) => (chosen.current = run)} />}
      {open === "keys" && <KeyboardMap onShut={shut} />}
    </p>
  );
}

/** The rooms as they stand at the side: some with a key of their own, the first ten others with a figure. */
function roomActions(): readonly Action[] {
  let figure = 0;
  const figureOf = (): string | null => {
    figure += 1;
    return figure <= 10 ? String(figure % 10) : null;
  };
  return [...document.querySelectorAll<HTMLAnchorElement>(".side nav a")].map((link) => ({
    name: link.firstElementChild?.textContent ?? link.textContent,
    key: link.getAttribute("aria-keyshortcuts") ?? figureOf(),
    run: () => link.click(),
  }));
}
