import { useState } from "react";
import type { InputField } from "../../../../../show/desk/workbench/input.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { useBench } from "../bench.ts";
import { Several } from "../fields/several.tsx";
import { Typed } from "../fields/typed.tsx";
import { asTyped, mapOf, textsOf } from "../fields/written.ts";

/** Things whose making is dated, and events in words. */
export function Dates({ field }: { readonly field: InputField }) {
  const { draft, set } = useBench();
  const [times, setTimes] = useState(0);
  const written = mapOf(draft.values["inputs"])[field.name];
  const map = mapOf(written);
  const of = textsOf(map["of"] ?? (Object.keys(map).length > 0 ? undefined : written));
  const put = (values: readonly string[]): void => {
    const dated = asTyped(values);
    if (map["without"] === undefined) set(["inputs", field.name], dated);
    else set(["inputs", field.name, "of"], dated);
  };
  return (
    <div className="selection">
      <Several label={words.events} values={of} choices={field.things} onChange={put} />
      <Typed
        key={times}
        label={words.event}
        value=""
        onTaken={(text) => {
          if (text !== "" && !of.includes(text)) put([...of, text]);
          setTimes(times + 1);
        }}
      />
    </div>
  );
}
