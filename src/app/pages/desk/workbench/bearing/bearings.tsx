import { StandingMark } from "../../../../parts/standing.tsx";
import { useState } from "react";
import type { BearingField } from "../../../../../show/desk/workbench/bearing.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { numberWords } from "../../../../words/shown/numbers.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { listOf, mapOf } from "../fields/written.ts";
import { Limits } from "./limits.tsx";

/** The claims that the number is to bear on, what is asked of it for each, and what it says. */
export function BearsOn() {
  const { page, draft, set } = useBench();
  const [next, setNext] = useState("");
  const entries = listOf(draft.values["bears-on"]).map(mapOf);
  const claimOf = (place: number): string => {
    const claim = entries[place]?.["claim"];
    return typeof claim === "string" ? claim : "";
  };
  const left = page.claims.filter((one) => !entries.some((_, place) => claimOf(place) === one.value));
  const chosen = left.some((one) => one.value === next) ? next : "";
  return (
    <section>
      <h2 className="label">{words.bears}</h2>
      {entries.length === 0 && <p className="quiet">{words.bearsNothing}</p>}
      {entries.map((entry, place) => (
        <Entry
          key={claimOf(place)}
          place={place}
          entry={entry}
          said={page.bearings.find((one) => one.claim === claimOf(place)) ?? null}
        />
      ))}
      <div className="adder">
        <Chosen label={words.addClaim} value={chosen} choices={left} onChosen={setNext} />
        <button
          type="button"
          disabled={chosen === ""}
          aria-label={`${words.add}: ${words.addClaim}`}
          onClick={() => {
            set(["bears-on", entries.length], { claim: chosen });
            setNext("");
          }}
        >
          {words.add}
        </button>
      </div>
    </section>
  );
}

interface EntryProps {
  readonly place: number;
  readonly entry: ReturnType<typeof mapOf>;
  readonly said: BearingField | null;
}

function Entry({ place, entry, said }: EntryProps) {
  const { page, draft, set } = useBench();
  const claim = typeof entry["claim"] === "string" ? entry["claim"] : "";
  const others = listOf(draft.values["bears-on"]).map((one) => mapOf(one)["claim"]);
  const path = ["bears-on", place];
  const strength = entry["strength"];
  return (
    <fieldset className="input entry">
      <legend className="unseen">
        {inReadersWords(page.claims.find((one) => one.value === claim)?.text ?? claim)}
      </legend>
      <Chosen
        label={words.claim}
        value={claim}
        choices={page.claims.filter((one) => one.value === claim || !others.includes(one.value))}
        onChosen={(value) => set([...path, "claim"], value)}
      />
      <Limits title={words.supports} path={[...path, "supports"]} written={entry["supports"]} />
      <Limits title={words.disputes} path={[...path, "disputes"]} written={entry["disputes"]} />
      <Chosen
        label={words.strength}
        value={typeof strength === "string" ? strength : "ordinary"}
        choices={Object.entries(words.strengths).map(([value, text]) => ({ value, text }))}
        onChosen={(value) => set([...path, "strength"], value === "ordinary" ? null : value)}
      />
      <output className="says-now">
        <span className="sentence">{words.says[said?.says ?? "none"]}</span>{" "}
        {said?.standing && (
          <span className="quiet">
            {words.claimThen} <StandingMark standing={said.standing} />
          </span>
        )}
        {said?.largeP && <span className="quiet">{numberWords.largeP}</span>}
        {said !== null && said.trouble !== null && (
          <span className="problem">{inReadersWords(said.trouble)}</span>
        )}
      </output>
      <p>
        <button type="button" onClick={() => set(["bears-on", place], null)}>
          {words.removeClaim}
        </button>
      </p>
    </fieldset>
  );
}
