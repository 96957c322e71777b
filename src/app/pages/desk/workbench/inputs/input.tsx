import type { InputField } from "../../../../../show/desk/workbench/input.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { inputName } from "../../../../words/desk/inputs.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { understoodWords } from "../fields/understood.ts";
import { mapOf } from "../fields/written.ts";
import { ByHand } from "./by-hand.tsx";
import { Dates } from "./dates.tsx";
import { Lines } from "./lines.tsx";
import { Selection } from "./selection.tsx";

/** One input: the way it is given, what it selects, and what is in and left out of it. */
export function Input({ field }: { readonly field: InputField }) {
  const { draft, set } = useBench();
  const inputs = mapOf(draft.values["inputs"]);
  const byHandPairs = inputs["pairs"] !== undefined && field.kind === "measurements";
  const path = ["inputs", field.name];
  const ways = waysOf(field);
  const changed = (way: string): void => {
    if (way === "selection") set(path, null);
    else if (way === "number") set(path, { number: "" });
    else
      set(
        path,
        field.lines.filter((line) => line.why === null).map((line) => line.id),
      );
  };
  return (
    <fieldset className="input">
      <legend>
        <b>{inputName(field.name)}</b> <span className="quiet">{inReadersWords(field.doc)}</span>
        {field.optional && <span className="quiet"> ({words.optional})</span>}
      </legend>
      {byHandPairs ? (
        <p className="quiet">{words.pairedByHand}</p>
      ) : (
        <>
          {ways.length > 1 && (
            <Chosen
              label={words.way}
              value={field.way}
              choices={ways.map((way) => ({ value: way, text: words.ways[way] }))}
              onChosen={changed}
            />
          )}
          {field.kind === "dates" ? (
            <Dates field={field} />
          ) : field.way === "selection" ? (
            <Selection field={field} />
          ) : field.way === "by-hand" ? (
            <ByHand field={field} />
          ) : (
            <OtherNumber field={field} />
          )}
          {field.way !== "number" && <Lines field={field} />}
        </>
      )}
    </fieldset>
  );
}

function waysOf({ kind }: InputField): readonly InputField["way"][] {
  if (kind === "dates") return ["selection"];
  if (kind === "number") return ["number"];
  return kind === "observations" ? ["selection", "by-hand"] : ["selection", "by-hand", "number"];
}

function OtherNumber({ field }: { readonly field: InputField }) {
  const { draft, set } = useBench();
  const path = ["inputs", field.name];
  const given = mapOf(mapOf(draft.values["inputs"])[field.name])["number"];
  return (
    <>
      <Chosen
        label={words.number}
        value={typeof given === "string" ? given : ""}
        choices={field.numbers}
        nothing={field.optional ? words.noNumber : words.choose}
        onChosen={(value) => set(path, value === "" && field.optional ? null : { number: value })}
      />
      {field.number !== null && (
        <output className={field.number.problem === null ? "quiet" : "problem"}>
          {understoodWords(field.number)}
        </output>
      )}
    </>
  );
}
