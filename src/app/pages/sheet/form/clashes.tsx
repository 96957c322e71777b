import { useLayoutEffect, useRef, useState } from "react";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import { enteredOf } from "../../../../show/desk/forms/filled/entered.ts";
import type { Entered, EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import { fieldsIn } from "../../../../show/desk/forms/layout.ts";
import { formWords as words } from "../../../words/desk/forms.ts";
import type { Filled } from "./filled.ts";
import { labelOf } from "./hands.ts";

interface Props {
  readonly filled: Filled;
  readonly fields: readonly string[];
  /** What the record now says; null where it is gone. */
  readonly now: WrittenMap | null;
  /** Called when nothing is left to choose. */
  readonly onSettled: () => void;
}

/** Fields that somebody else changed while the form was open: both versions, and a choice for each. */
export function Clashes({ filled, fields, now, onSettled }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  const [kept, setKept] = useState<ReadonlyMap<string, "theirs" | "mine">>(new Map());
  const { form, checked, set } = filled;
  const { seen } = form;
  if (now === null || seen === null) return <Gone filled={filled} onSettled={onSettled} />;

  const choose = (name: string, whose: "theirs" | "mine"): void => {
    const theirs = at(now, name);
    const nextSeen = without(seen, name, theirs);
    const field = fieldsIn(form.list)[name];
    const entered = theirs === null || !field ? null : enteredOf(field, theirs);
    set(whose === "mine" ? form.entered : withoutEntered(form.entered, name, entered), nextSeen);
    const next = new Map(kept).set(name, whose);
    setKept(next);
    if (fields.every((one) => next.has(one))) onSettled();
  };
  return (
    <section className="differing" aria-labelledby="clashes">
      <h2 className="label" id="clashes" tabIndex={-1} ref={heading}>
        {words.clash}
      </h2>
      <p>{words.clashWhy}</p>
      {fields.map((name) => {
        const whose = kept.get(name);
        return (
          <fieldset key={name} className="differs">
            <legend className="label">{labelOf(name)}</legend>
            <dl className="facts">
              <Version name={words.was} value={at(seen, name)} hidden={hidden(name)} />
              <Version name={words.theirs} value={at(now, name)} hidden={hidden(name)} />
              <Version name={words.mine} value={at(checked.values, name)} hidden={hidden(name)} />
            </dl>
            {whose === undefined ? (
              <p className="does">
                <button
                  type="button"
                  aria-label={words.keepTheirsIn(labelOf(name))}
                  onClick={() => choose(name, "theirs")}
                >
                  {words.keepTheirs}
                </button>
                <button
                  type="button"
                  aria-label={words.writeMineIn(labelOf(name))}
                  onClick={() => choose(name, "mine")}
                >
                  {words.writeMine}
                </button>
              </p>
            ) : (
              <output>{whose === "theirs" ? words.chosenTheirs : words.chosenMine}</output>
            )}
          </fieldset>
        );
      })}
    </section>
  );

  function hidden(name: string): boolean {
    return (
      form.list === "artefacts" &&
      (name === "coordinates" || name === "found-at") &&
      seen?.[name] === undefined
    );
  }
}

function Gone({ filled, onSettled }: Pick<Props, "filled" | "onSettled">) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  const [anew, setAnew] = useState(false);
  return (
    <section className="differing" aria-labelledby="clashes">
      <h2 className="label" id="clashes" tabIndex={-1} ref={heading}>
        {words.goneTitle}
      </h2>
      <p>{words.gone}</p>
      {!anew && (
        <p className="does">
          <button
            type="button"
            onClick={() => {
              setAnew(true);
              filled.set(filled.form.entered, null);
              onSettled();
            }}
          >
            {words.writeMine}
          </button>
        </p>
      )}
    </section>
  );
}

function Version({
  name,
  value,
  hidden,
}: {
  readonly name: string;
  readonly value: Written | null;
  readonly hidden: boolean;
}) {
  return (
    <>
      <dt>{name}</dt>
      <dd dir="auto">
        {hidden ? (
          <span className="quiet">{words.hidden}</span>
        ) : value === null ? (
          <span className="quiet">{words.nothing}</span>
        ) : (
          plain(value)
        )}
      </dd>
    </>
  );
}

/** A value as it stands in a file, without its signs. */
function plain(value: Written): string {
  if (typeof value === "string") return value;
  if (isList(value)) return value.map(plain).join("; ");
  return Object.entries(value)
    .map(([name, one]) => `${name}: ${plain(one)}`)
    .join(", ");
}

function at(map: WrittenMap, name: string): Written | null {
  return Object.hasOwn(map, name) ? (map[name] ?? null) : null;
}

function without(map: WrittenMap, name: string, value: Written | null): WrittenMap {
  const rest = Object.entries(map).filter(([one]) => one !== name);
  return Object.fromEntries(value === null ? rest : [...rest, [name, value]]);
}

function withoutEntered(map: EnteredMap, name: string, value: Entered | null): EnteredMap {
  const rest = Object.entries(map).filter(([one]) => one !== name);
  return Object.fromEntries(value === null ? rest : [...rest, [name, value]]);
}
