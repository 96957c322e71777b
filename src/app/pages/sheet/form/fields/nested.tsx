import { Fragment } from "react";
import type { ReactNode } from "react";
import type { Field, Fields } from "../../../../../read/grammar/field.ts";
import type { Step } from "../../../../../read/yaml/tree.ts";
import { enteredAt, isEnteredList } from "../../../../../show/desk/forms/filled/entered.ts";
import type { Entered, EnteredMap } from "../../../../../show/desk/forms/filled/entered.ts";
import { formWords as words } from "../../../../words/desk/forms.ts";
import { labelOf, placeId, useHands } from "../hands.ts";
import { Rows } from "./entries.tsx";
import { Frame } from "./frame.tsx";
import { Search } from "./search.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly path: readonly Step[];
  readonly field: Field;
}

/** How a field within another one is shown: by its place, its row of the grammar's table, and what stands in it. */
export type OneWithin = (path: readonly Step[], field: Field, value: Entered | null) => ReactNode;

interface Within extends Props {
  readonly fields: Fields;
  readonly one: OneWithin;
}

/** The fields of a map within a form. */
function inside(path: readonly Step[], fields: Fields, value: Entered, one: OneWithin): ReactNode {
  const map: EnteredMap = typeof value === "string" || isEnteredList(value) ? {} : value;
  return (
    <div className="inside">
      {Object.entries(fields).map(([name, field]) => (
        <Fragment key={name}>{one([...path, name], field, enteredAt(map, name))}</Fragment>
      ))}
    </div>
  );
}

/** A few fields that belong together. */
export function Group({ path, field, fields, value, one }: Within & { readonly value: Entered }) {
  return (
    <Frame path={path} field={field} group>
      {inside(path, fields, value, one)}
    </Frame>
  );
}

/** Several sets of the same fields, and a place for one more. */
export function Items({
  path,
  field,
  fields,
  values,
  one,
}: Within & { readonly values: readonly Entered[] }) {
  const { put, toPlace } = useHands();
  const label = labelOf(String(path.at(-1)));
  const nth = (place: number): string => words.nth(label, place + 1);
  return (
    <Frame path={path} field={field} group>
      <Rows
        path={path}
        count={values.length}
        nameOf={nth}
        values={values}
        row={(place) => (
          <fieldset>
            <legend className="nth">{nth(place)}</legend>
            {inside([...path, place], fields, values[place] ?? {}, one)}
          </fieldset>
        )}
      />
      <button
        type="button"
        id={placeId(path)}
        aria-label={words.addTo(label)}
        onClick={() => {
          put([...path, values.length], {});
          toPlace([...path, values.length]);
        }}
      >
        {words.addOne}
      </button>
    </Frame>
  );
}

/** Names with a value each: of the scholar's own, or claims chosen by search; where one value may do for all, that one. */
export function Pairs({ path, field, value }: Props & { readonly value: Entered }) {
  const { put, toPlace, named, learn } = useHands();
  const single = field.type === "probability";
  const pairs = isEnteredList(value) ? value : [];
  const alone = typeof value === "string" && single;
  const label = labelOf(String(path.at(-1)));
  const id = placeId(path);
  const part = (place: number, name: string): string => {
    const pair = pairs[place];
    const text = pair === undefined || typeof pair === "string" || isEnteredList(pair) ? "" : pair[name];
    return typeof text === "string" ? text : "";
  };
  const nth = (place: number): string =>
    inReadersWords(named(part(place, "name"))?.label ?? (part(place, "name") || words.nth(label, place + 1)));
  const told = (place: number, name: string) => ({
    id: placeId([...path, place, name]),
    "aria-label": `${nth(place)}: ${name === "name" ? words.name : words.value}`,
    "aria-describedby": `${id}-trouble ${id}-help`,
  });
  const partIn = (place: number, name: string, dir: "auto" | "ltr"): ReactNode => (
    <input
      type="text"
      autoComplete="off"
      dir={dir}
      {...told(place, name)}
      value={part(place, name)}
      onChange={(event) => put([...path, place, name], event.target.value)}
    />
  );
  const row = (place: number): ReactNode => (
    <div className="pair">
      {field.type === "textMap" ? (
        partIn(place, "name", "auto")
      ) : (
        <Search
          from={{ from: "records", to: ["claims"] }}
          text={inReadersWords(named(part(place, "name"))?.label ?? part(place, "name"))}
          onType={(text) => put([...path, place, "name"], text)}
          free={false}
          onChoose={(choice) => {
            learn(choice);
            put([...path, place, "name"], choice.id);
            if (document.activeElement?.id === told(place, "name").id) toPlace([...path, place, "value"]);
          }}
          told={told(place, "name")}
        />
      )}
      {partIn(place, "value", field.type === "textMap" ? "auto" : "ltr")}
    </div>
  );
  const add = (): void => {
    put(path, [...pairs, { name: "", value: "" }]);
    toPlace([...path, pairs.length]);
  };
  return (
    <Frame path={path} field={field} group>
      {single && pairs.length === 0 && (
        <input
          type="text"
          dir="ltr"
          autoComplete="off"
          aria-label={words.one}
          aria-describedby={`${id}-trouble ${id}-help`}
          value={alone ? value : ""}
          onChange={(event) => put(path, event.target.value)}
        />
      )}
      <Rows path={path} count={pairs.length} nameOf={nth} row={row} values={pairs} />
      <button type="button" id={id} aria-label={single ? words.byAnswer : words.addTo(label)} onClick={add}>
        {single && pairs.length === 0 ? words.byAnswer : words.addOne}
      </button>
    </Frame>
  );
}
