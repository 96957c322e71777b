import { useState } from "react";
import type { EntryLine } from "../../../../../show/numbers/entries.ts";
import type { InputField, PairLine } from "../../../../../show/desk/workbench/input.ts";
import { inputName } from "../../../../words/desk/inputs.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { marks } from "../../../../words/reader/marks.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { listOf, mapOf, textsOf } from "../fields/written.ts";
import { Find } from "./by-hand.tsx";

/** What is set beside what, and a way to pair by hand. */
export function Pairs({ pairs }: { readonly pairs: readonly PairLine[] }) {
  const { page, draft, set } = useBench();
  const written = mapOf(draft.values["inputs"])["pairs"];
  const byHand = written !== undefined;
  const [first, second] = page.inputs.filter((one) => one.kind === "measurements");
  const now = pairs.map(({ first: one, second: other }) => [one[0]?.id ?? "", other[0]?.id ?? ""]);
  return (
    <fieldset className="input">
      <legend>
        <b>{words.pairs(pairs.length)}</b>
      </legend>
      <label className="tick">
        <input
          type="checkbox"
          checked={byHand}
          onChange={(event) => set(["inputs", "pairs"], event.target.checked ? now : null)}
        />
        {words.pairsByHand}
      </label>
      <ol className="pairs">
        {pairs.map(({ first: one, second: other }, place) => (
          <li key={`${one[0]?.id} ${other[0]?.id}`}>
            <span dir="auto">{told(one)}</span> {words.with} <span dir="auto">{told(other)}</span>
            {byHand && (
              <button
                type="button"
                aria-label={words.takeAway(`${told(one)} ${words.with} ${told(other)}`)}
                onClick={() => set(["inputs", "pairs"], listOf(written).toSpliced(place, 1))}
              >
                {words.awayShort}
              </button>
            )}
          </li>
        ))}
      </ol>
      {byHand && first && second && (
        <NewPair
          first={first}
          second={second}
          onPair={(pair) => set(["inputs", "pairs"], [...pairsIn(written), pair])}
        />
      )}
    </fieldset>
  );
}

function told(lines: readonly EntryLine[]): string {
  return lines
    .map(({ text, written }) => [text, written].map(inReadersWords).join(marks.comma))
    .join(marks.semicolon);
}

/** One pair may stand alone, as a list of two ids. */
function pairsIn(written: Parameters<typeof listOf>[0]): readonly (readonly string[])[] {
  return listOf(written)
    .map(textsOf)
    .filter((pair) => pair.length > 0);
}

function NewPair({
  first,
  second,
  onPair,
}: {
  readonly first: InputField;
  readonly second: InputField;
  readonly onPair: (pair: readonly string[]) => void;
}) {
  const [one, setOne] = useState("");
  const [other, setOther] = useState("");
  return (
    <div className="new-pair">
      <Find field={first} label={words.findFor(inputName(first.name))} />
      <Chosen label={inputName(first.name)} value={one} choices={first.byHand.choices} onChosen={setOne} />
      <Find field={second} label={words.findFor(inputName(second.name))} />
      <Chosen
        label={inputName(second.name)}
        value={other}
        choices={second.byHand.choices}
        onChosen={setOther}
      />
      <button
        type="button"
        disabled={one === "" || other === ""}
        onClick={() => {
          onPair([one, other]);
          setOne("");
          setOther("");
        }}
      >
        {words.pair}
      </button>
    </div>
  );
}
