import { useState } from "react";
import type { Written, WrittenMap } from "../../../../../read/edit/written.ts";
import type { Step } from "../../../../../read/yaml/tree.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { numberName } from "../../../../words/shown/numbers.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { Typed } from "../fields/typed.tsx";
import { listOf, mapOf } from "../fields/written.ts";

interface Props {
  readonly title: string;
  /** Where the condition stands in the draft. */
  readonly path: readonly Step[];
  readonly written: Written | undefined;
}

/** What is asked of the numbers: all of one row of limits, or all of another. */
export function Limits({ title, path, written }: Props) {
  const { set } = useBench();
  const ways = listOf(written).map(mapOf);
  const shown = ways.length === 0 ? [{}] : ways;
  const put = (place: number, way: WrittenMap | null): void => {
    const after = way === null ? shown.toSpliced(place, 1) : shown.toSpliced(place, 1, way);
    const kept = after.filter((one) => Object.keys(one).length > 0);
    set(path, kept.length === 0 ? null : kept.length === 1 ? (kept[0] ?? null) : kept);
  };
  return (
    <fieldset className="limits">
      <legend className="field-label">{title}</legend>
      {shown.map((way, place) => (
        <div key={place}>
          {place > 0 && <p className="quiet">{words.or}</p>}
          <Way title={title} way={way} onChange={(next) => put(place, next)} />
        </div>
      ))}
      <AddLimit
        title={title}
        last={ways.at(-1) ?? null}
        onAnd={(name) => put(Math.max(0, ways.length - 1), { ...ways.at(-1), [name]: "<" })}
        onOr={(name) => set(path, [...ways, { [name]: "<" }])}
      />
    </fieldset>
  );
}

interface WayProps {
  readonly title: string;
  readonly way: WrittenMap;
  readonly onChange: (way: WrittenMap | null) => void;
}

function Way({ title, way, onChange }: WayProps) {
  const { page, typing } = useBench();
  const [typed, setTyped] = useState<string | null>(null);
  const without = (name: string): WrittenMap =>
    Object.fromEntries(Object.entries(way).filter(([other]) => other !== name));
  return (
    <>
      {Object.entries(way).map(([name, asks], place) => {
        const [sign, limit] = parted(typeof asks === "string" ? asks : "");
        const put = (nextSign: string, nextLimit: string): void =>
          onChange({ ...way, [name]: `${nextSign} ${nextLimit}`.trim() });
        return (
          <div className="limit" key={name}>
            <span className="name">
              {place > 0 && <span className="quiet">{words.and} </span>}
              {numberName(name)}
            </span>
            <Chosen
              label={`${title}: ${numberName(name)}, ${words.comparison}`}
              hidden
              value={sign}
              choices={Object.entries(words.comparisons).map(([value, text]) => ({ value, text }))}
              onChosen={(next) => put(next, limit)}
            />
            <Typed
              label={`${title}: ${numberName(name)}, ${words.limit}`}
              hidden
              value={limit}
              understood={typed === name ? page.limit : null}
              {...(sign === "within" ? { hint: words.limitHint["within"] ?? "" } : {})}
              onTaken={(text) => {
                setTyped(null);
                put(sign, text);
              }}
              onTyping={(text) => {
                setTyped(text === null ? null : name);
                typing(`limit.${name}`, text === null ? null : `${sign} ${text}`);
              }}
            />
            <button
              type="button"
              aria-label={words.takeAway(`${title}: ${numberName(name)}`)}
              onClick={() => onChange(without(name))}
            >
              {words.awayShort}
            </button>
          </div>
        );
      })}
    </>
  );
}

interface AddProps {
  readonly title: string;
  /** The last row of limits; null where there is none. */
  readonly last: WrittenMap | null;
  readonly onAnd: (name: string) => void;
  readonly onOr: (name: string) => void;
}

/** One more number to ask for: in the last row, where it does not ask for that yet, or in a row of its own. */
function AddLimit({ title, last, onAnd, onOr }: AddProps) {
  const { page } = useBench();
  const [next, setNext] = useState("");
  const numbers = page.form?.numbers ?? [];
  const add = (how: (name: string) => void): void => {
    how(next);
    setNext("");
  };
  return (
    <div className="adder">
      <Chosen
        label={`${title}: ${words.addLimit}`}
        hidden
        value={next}
        nothing={words.addLimit}
        choices={numbers.map(({ name }) => ({ value: name, text: numberName(name) }))}
        onChosen={setNext}
      />
      <button
        type="button"
        disabled={next === "" || (last !== null && Object.hasOwn(last, next))}
        aria-label={`${last === null ? words.add : words.and}: ${title}`}
        onClick={() => add(onAnd)}
      >
        {last === null ? words.add : words.and}
      </button>
      {last !== null && (
        <button
          type="button"
          disabled={next === ""}
          aria-label={`${words.orElse}: ${title}`}
          onClick={() => add(onOr)}
        >
          {words.orElse}
        </button>
      )}
    </div>
  );
}

/** A comparison as its sign and what stands behind it. */
function parted(asks: string): readonly [string, string] {
  const found = /^\s*(<=|>=|<|>|≤|≥|within)\s*(.*)$/u.exec(asks);
  const sign = found?.[1] === "≤" ? "<=" : found?.[1] === "≥" ? ">=" : (found?.[1] ?? "<");
  return [sign, (found?.[2] ?? asks).trim()];
}
