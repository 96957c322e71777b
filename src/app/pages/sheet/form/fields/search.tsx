import { useEffect, useId, useLayoutEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import type { KeyboardEvent } from "react";
import type { Help } from "../../../../../show/desk/forms/layout.ts";
import type { Choice, Choices } from "../../../../../show/desk/forms/offered/choices.ts";
import { formWords as words } from "../../../../words/desk/forms.ts";
import { askModel } from "../asking.ts";
import { choiceDue } from "./due.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { kindOf } from "../../../../../read/grammar/kinds.ts";
import { useMaking } from "./making.ts";

/** So many are offered at once. */
const most = 8;

interface Props {
  readonly from: Help;
  readonly text: string;
  readonly onType: (text: string) => void;
  readonly onChoose: (choice: Choice) => void;
  /** Any text will do: nothing is chosen before an arrow key was pressed. */
  readonly free: boolean;
  readonly told: Readonly<Record<string, string | boolean>>;
}

/**
 * A field that searches while one types: arrow keys go through what fits, Enter takes the first that fits what was typed, as
 * soon as that is known, Escape shuts the list. What is not recorded yet can be.
 */
export function Search({ from, text, onType, onChoose, free, told }: Props) {
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(-1);
  /** Enter was pressed before it was known what fits; the field may have been left since. */
  const due = useRef<{ readonly at: "here" | "left"; readonly end: () => void } | null>(null);
  const giveUp = (): void => {
    due.current?.end();
    due.current = null;
  };
  const take = (choice: Choice): void => {
    setOpen(false);
    setAt(-1);
    onChoose(choice);
    giveUp();
  };
  const [found, isOfText] = useChoices(from, text, open, (told) => {
    const best = told?.first[0];
    if (due.current && best) return take(best);
    if (due.current?.at === "left") setOpen(false);
    giveUp();
  });
  useEffect(() => () => due.current?.end(), []);
  const listId = useId();
  const first = found?.first ?? [];
  const making = useMaking(from);
  const [trouble, setTrouble] = useState("");
  const makes = making !== null && found !== null && text.trim() !== "" && !free;
  const count = first.length + (makes ? 1 : 0);
  const active = at >= 0 ? at : free || text === "" || first.length === 0 ? -1 : 0;
  const shown = open && found !== null && (first.length > 0 || !free);

  const option = shown && active >= 0 ? `${listId}-${active}` : undefined;
  useLayoutEffect(() => {
    if (option !== undefined) document.getElementById(option)?.scrollIntoView({ block: "nearest" });
  }, [option]);

  const make = async (): Promise<void> => {
    const made = await making?.make(text);
    if (made && "id" in made) take(made);
    else setTrouble(made?.problem ?? "");
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.nativeEvent.isComposing || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      giveUp();
      const step = event.key === "ArrowDown" ? 1 : -1;
      if (!open) setOpen(true);
      else if (count > 0) setAt(active < 0 && step < 0 ? count - 1 : (active + step + count) % count);
    } else if (event.key === "Escape" && open) {
      event.preventDefault();
      event.stopPropagation();
      setOpen(false);
      giveUp();
    } else if (event.key === "Enter" && (shown || !free)) {
      // What is typed here is looked for: Enter never saves the form.
      event.preventDefault();
      const choice = shown ? first[active] : undefined;
      if (open && !isOfText && at < 0 && !free && text !== "")
        due.current ??= { at: "here", end: choiceDue() };
      else if (choice) take(choice);
      else if (shown && makes && active === first.length) void make();
      else if (!shown) setOpen(true);
    }
  };
  return (
    <div className="search-choice">
      <input
        type="text"
        role="combobox"
        {...told}
        dir="auto"
        autoComplete="off"
        spellCheck={free}
        placeholder={free ? undefined : words.typeToSearch}
        aria-autocomplete="list"
        aria-expanded={shown}
        aria-controls={shown ? listId : undefined}
        aria-activedescendant={option}
        value={text}
        onChange={(event) => {
          setOpen(true);
          setAt(-1);
          giveUp();
          setTrouble("");
          onType(event.target.value);
        }}
        onKeyDown={onKey}
        onBlur={() => {
          if (due.current) due.current = { ...due.current, at: "left" };
          else setOpen(false);
        }}
      />
      <div className={shown ? "choices" : "unseen"}>
        {shown && (
          <ul role="listbox" id={listId} aria-label={words.choose}>
            {first.map((one, place) => (
              <li
                key={one.id}
                id={`${listId}-${place}`}
                role="option"
                aria-selected={place === active}
                onPointerDown={(event) => {
                  event.preventDefault();
                  take(one);
                }}
              >
                <Named choice={one} />
              </li>
            ))}
            {makes && (
              <li
                id={`${listId}-${first.length}`}
                role="option"
                aria-selected={active === first.length}
                onPointerDown={(event) => {
                  event.preventDefault();
                  void make();
                }}
              >
                {words.record(kindOf(making.list).singular, text.trim())}
              </li>
            )}
          </ul>
        )}
        <output className="quiet">
          {shown && words.fitting(first.length, found.more)}
          {shown && makes && first.length === 0 && ` ${words.recordKeys}`}
          {trouble !== "" && ` ${trouble}`}
        </output>
      </div>
    </div>
  );
}

/** A record or source by its name, with its id and what it is. */
export function Named({ choice }: { readonly choice: Choice }) {
  return (
    <>
      <span className="sentence" dir="auto">
        {inReadersWords(choice.label)}
      </span>
      {choice.kind !== null && (
        <span className="quiet">
          {inReadersWords(choice.kind)} <bdi>{choice.id}</bdi>
        </span>
      )}
    </>
  );
}

/**
 * What fits some words, and whether these are they; an earlier answer stays in sight until the next is there, which is told,
 * null where there is none or where something else is asked meanwhile.
 */
function useChoices(
  from: Help,
  text: string,
  open: boolean,
  onFound: (found: Choices | null) => void,
): readonly [Choices | null, boolean] {
  const [found, setFound] = useState<{ readonly of: string; readonly told: Choices | null } | null>(null);
  const asking = JSON.stringify(from);
  const telling = useRef(onFound);
  useLayoutEffect(() => {
    telling.current = onFound;
  });
  useEffect(() => {
    if (!open) return undefined;
    let [stale, answered] = [false, false];
    const given = { from: JSON.parse(asking) as Help, text, most };
    void askModel("choose", given).then((told) => {
      if (stale) return;
      answered = true;
      // At once: an Enter in between would wait for an answer that is there.
      flushSync(() => setFound({ of: text, told }));
      // What is taken is in the form before anything else goes on.
      flushSync(() => telling.current(told));
    });
    return () => {
      stale = true;
      if (!answered) telling.current(null);
    };
  }, [asking, text, open]);
  return open && found !== null ? [found.told, found.of === text] : [null, false];
}
