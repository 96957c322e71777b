import { useState } from "react";
import type { InputField } from "../../../../../show/desk/workbench/input.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { Typed } from "../fields/typed.tsx";
import { mapOf, textsOf } from "../fields/written.ts";

/** Records one by one, in their order; those that are in it are ticked off below. */
export function ByHand({ field }: { readonly field: InputField }) {
  const { draft, set } = useBench();
  const ids = textsOf(mapOf(draft.values["inputs"])[field.name]);
  const [next, setNext] = useState("");
  const choices = field.byHand.choices.filter((one) => !ids.includes(one.value));
  const chosen = choices.some((one) => one.value === next) ? next : "";
  return (
    <div className="by-hand">
      <Find field={field} label={words.find} />
      <div className="adder">
        <Chosen label={words.record} value={chosen} choices={choices} onChosen={setNext} />
        <button
          type="button"
          disabled={chosen === ""}
          onClick={() => {
            set(["inputs", field.name], [...ids, chosen]);
            setNext("");
          }}
        >
          {words.add}
        </button>
      </div>
    </div>
  );
}

/** Narrows the records that are offered to those in whose words a text occurs. */
export function Find({ field, label }: { readonly field: InputField; readonly label: string }) {
  const { typing } = useBench();
  const [sought, setSought] = useState("");
  const { choices, all } = field.byHand;
  const seek = (text: string): void => {
    setSought(text);
    typing(`find.${field.name}`, text);
  };
  return (
    <Typed
      label={label}
      value={sought}
      onTaken={seek}
      onTyping={(text) => {
        if (text !== null) typing(`find.${field.name}`, text);
      }}
      hint={words.ofThem(choices.length, all)}
    />
  );
}
