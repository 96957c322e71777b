import { useLayoutEffect, useRef, useState } from "react";
import type { ReactNode, RefObject } from "react";
import type { Field } from "../../../../../read/grammar/field.ts";
import type { Step } from "../../../../../read/yaml/tree.ts";
import type { Entered } from "../../../../../show/desk/forms/filled/entered.ts";
import type { Help } from "../../../../../show/desk/forms/layout.ts";
import { formWords as words } from "../../../../words/desk/forms.ts";
import { labelOf, placeId, useHands } from "../hands.ts";
import { Frame } from "./frame.tsx";
import { Named, Search } from "./search.tsx";
import { Line } from "./text.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly path: readonly Step[];
  readonly field: Field;
  readonly values: readonly string[];
}

/** How many entries a list may have, and how one is shown in words. */
interface RowsProps {
  readonly path: readonly Step[];
  readonly count: number;
  readonly nameOf: (place: number) => string;
  readonly row: (place: number) => ReactNode;
  readonly values: readonly Entered[];
}

/** Entries of a list one below the other: each can be taken away or moved up, by its buttons or with Alt and an arrow key. */
export function Rows({ path, count, nameOf, row, values }: RowsProps) {
  const { put, toPlace } = useHands();
  const move = (place: number, to: number): void => {
    const one = values[place];
    if (one === undefined || to < 0 || to >= count) return;
    put(path, values.toSpliced(place, 1).toSpliced(to, 0, one));
    toPlace([...path, to]);
  };
  const list = useRef<HTMLOListElement>(null);
  useMoveKeys(list, move);
  if (count === 0) return null;
  return (
    <ol className="entries" ref={list}>
      {Array.from({ length: count }, (_, place) => (
        <li key={place} id={placeId([...path, place])}>
          <div className="entry">{row(place)}</div>
          <div className="does">
            {place > 0 && (
              <button
                type="button"
                className="plain"
                aria-label={words.upOne(nameOf(place))}
                onClick={() => move(place, place - 1)}
              >
                {words.up}
              </button>
            )}
            <button
              type="button"
              className="plain"
              aria-label={words.takeAwayOne(nameOf(place))}
              onClick={() => {
                put([...path, place], null);
                toPlace(path);
              }}
            >
              {words.takeAway}
            </button>
          </div>
        </li>
      ))}
    </ol>
  );
}

/** Hears Alt with an arrow key in any entry of a list; entries of a list within one are moved by their own. */
function useMoveKeys(
  list: RefObject<HTMLOListElement | null>,
  move: (place: number, to: number) => void,
): void {
  useLayoutEffect(() => {
    const all = list.current;
    const onKey = (event: KeyboardEvent): void => {
      if (!event.altKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
      const place = [...(all?.children ?? [])].findIndex((one) => one.contains(event.target as Node));
      if (place < 0) return;
      event.preventDefault();
      event.stopPropagation();
      move(place, place + (event.key === "ArrowUp" ? -1 : 1));
    };
    all?.addEventListener("keydown", onKey);
    return () => all?.removeEventListener("keydown", onKey);
  });
}

/** Records and sources that are chosen by search; `several` as many as are wanted, else one. */
export function Chosen({
  path,
  field,
  values,
  several,
  to,
  cited,
}: Props & { readonly several: boolean; readonly to: Help; readonly cited: boolean }) {
  const { put, toPlace, named, learn } = useHands();
  const [text, setText] = useState("");
  const label = labelOf(String(path.at(-1)));
  const id = placeId(path);
  const rowsPath = path;
  const nameOf = (place: number): string =>
    inReadersWords(named(keyOf(values[place] ?? ""))?.label ?? values[place] ?? "");
  const all = (next: readonly string[]): void => put(path, several ? next : (next[0] ?? null));
  const row = (place: number): ReactNode => {
    const value = values[place] ?? "";
    const key = cited ? keyOf(value) : value;
    const known = named(key);
    return (
      <>
        <span className="chosen">
          {known ? (
            <Named choice={known} />
          ) : (
            <>
              <bdi>{key}</bdi> <span className="quiet">{words.unknown}</span>
            </>
          )}
        </span>
        {cited && (
          <label className="locator">
            <span className="quiet">{words.place}</span>
            <input
              type="text"
              dir="auto"
              autoComplete="off"
              aria-label={words.placeIn(nameOf(place))}
              value={value.slice(key.length).replace(/^\s/, "")}
              onChange={(event) => all(values.with(place, `${key} ${event.target.value}`))}
            />
          </label>
        )}
      </>
    );
  };
  return (
    <Frame path={path} field={field} group={several || values.length > 0}>
      {several ? (
        <Rows path={rowsPath} count={values.length} nameOf={nameOf} row={row} values={values} />
      ) : (
        values.length > 0 && (
          // What was just chosen has the focus, and not its button: an Enter too many would take it away again.
          <div className="entries one" id={placeId([...path, 0])} tabIndex={cited ? undefined : -1}>
            <div className="entry">{row(0)}</div>
            <div className="does">
              <button
                type="button"
                className="plain"
                aria-label={words.takeAwayOne(nameOf(0))}
                onClick={() => {
                  put(path, null);
                  toPlace(path);
                }}
              >
                {words.takeAway}
              </button>
            </div>
          </div>
        )
      )}
      {(several || values.length === 0) && (
        <Search
          from={to}
          text={text}
          onType={setText}
          free={false}
          onChoose={(choice) => {
            setText("");
            learn(choice);
            const again = values.some((one) => keyOf(one) === choice.id);
            if (again && !cited) return;
            all([...values, choice.id]);
            // Of a field of one, nothing is left to type into: what was chosen has the focus, unless one has gone on.
            if (document.activeElement?.id === id)
              toPlace(cited || !several ? [...path, values.length] : path);
          }}
          told={{
            id,
            "aria-describedby": `${id}-trouble ${id}-help`,
            ...(values.length > 0 ? { "aria-label": words.add(label) } : {}),
            ...(several && values.length === 0 ? { "aria-label": words.search(label) } : {}),
          }}
        />
      )}
    </Frame>
  );
}

/** Texts one below the other, and a place for one more. */
export function Texts({ path, field, values, help }: Props & { readonly help: Help | null }) {
  const { put, toPlace, learn } = useHands();
  const label = labelOf(String(path.at(-1)));
  const id = placeId(path);
  const figures = field.type === "quantities";
  const nth = (place: number): string => words.nth(label, place + 1);
  const told = (place: number) => ({
    id: `${placeId([...path, place])}-text`,
    "aria-label": nth(place),
    "aria-describedby": `${id}-trouble ${id}-help`,
  });
  const row = (place: number): ReactNode =>
    help ? (
      <Search
        from={help}
        text={values[place] ?? ""}
        onType={(text) => put([...path, place], text)}
        free
        onChoose={(choice) => {
          learn(choice);
          put([...path, place], choice.id);
        }}
        told={told(place)}
      />
    ) : (
      <Line path={[...path, place]} value={values[place] ?? ""} told={told(place)} figures={figures} />
    );
  return (
    <Frame path={path} field={field} group>
      <Rows path={path} count={values.length} nameOf={nth} row={row} values={values} />
      <button
        type="button"
        id={id}
        aria-label={words.addTo(label)}
        onClick={() => {
          put([...path, values.length], "");
          toPlace([...path, values.length]);
        }}
      >
        {words.addOne}
      </button>
    </Frame>
  );
}

function keyOf(citation: string): string {
  return citation.split(/\s/u)[0] ?? "";
}
