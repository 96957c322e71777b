import { useState } from "react";
import type { useAddress } from "../../address.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { tellingWords as words } from "../../words/telling/telling.ts";
import type { SectionChoice, TellingPage } from "../../worker/planning/telling.ts";

interface Props {
  readonly page: TellingPage;
  readonly toLook: ReturnType<typeof useAddress>["toLook"];
}

/** The sections of the review: which are written, and in which order; both stand in the address. */
export function Sections({ page, toLook }: Props) {
  const { sections, usual, all } = page;
  const [said, setSaid] = useState("");
  // Those that are left out keep their places among the others, as far as they had any.
  const rows = [...sections, ...all.map((one) => one.name).filter((name) => !sections.includes(name))];
  const byName = new Map(all.map((one) => [one.name, one]));
  const choose = (next: readonly string[]): void => {
    const isUsual = next.join("\n") === usual.join("\n");
    toLook({ sections: isUsual ? null : next.join(",") }, "replace");
  };
  const move = (name: string, by: number): void => {
    const place = sections.indexOf(name);
    const to = place + by;
    if (place < 0 || to < 0 || to >= sections.length) return;
    const next = sections.filter((one) => one !== name).toSpliced(to, 0, name);
    const { text = name } = byName.get(name) ?? {};
    setSaid(words.moved(inReadersWords(text), to + 1, next.length));
    choose(next);
  };
  const turn = (name: string, on: boolean): void =>
    choose(on ? placed(name, sections, all) : sections.filter((one) => one !== name));
  return (
    <details className="sections" open={page.asked.sections !== null}>
      <summary>{words.sectionsOf(sections.length, all.length)}</summary>
      <p className="quiet">{words.sectionsHelp}</p>
      <ol>
        {rows.map((name) => {
          const one = byName.get(name);
          const place = sections.indexOf(name);
          return (
            one && (
              <Row
                key={name}
                one={one}
                on={place >= 0}
                first={place === 0}
                last={place === sections.length - 1}
                turn={turn}
                move={move}
              />
            )
          );
        })}
      </ol>
      {page.asked.sections !== null && (
        <button type="button" onClick={() => toLook({ sections: null }, "replace")}>
          {words.usual}
        </button>
      )}
      <output className="unseen">{said}</output>
    </details>
  );
}

/** The sections with one more: before the first that usually stands behind it. */
function placed(name: string, sections: readonly string[], all: readonly SectionChoice[]): readonly string[] {
  const order = all.map((one) => one.name);
  const at = sections.findIndex((one) => order.indexOf(one) > order.indexOf(name));
  return sections.toSpliced(at < 0 ? sections.length : at, 0, name);
}

interface RowProps {
  readonly one: SectionChoice;
  readonly on: boolean;
  readonly first: boolean;
  readonly last: boolean;
  readonly turn: (name: string, on: boolean) => void;
  readonly move: (name: string, by: number) => void;
}

function Row({ one, on, first, last, turn, move }: RowProps) {
  const { name, file } = one;
  const text = inReadersWords(one.text);
  const steps = [
    { by: -1, can: on && !first, word: words.up, label: words.earlier(text) },
    { by: 1, can: on && !last, word: words.down, label: words.later(text) },
  ];
  return (
    <li>
      <label>
        <input
          type="checkbox"
          checked={on}
          onChange={(event) => turn(name, event.target.checked)}
          onKeyDown={(event) => {
            const by = event.altKey ? ({ ArrowUp: -1, ArrowDown: 1 }[event.key] ?? 0) : 0;
            if (by === 0) return;
            event.preventDefault();
            move(name, by);
          }}
        />
        <span>
          <span dir="auto">{text}</span>
          {file !== null && <span className="quiet own">{words.ownWords(file)}</span>}
        </span>
      </label>
      <span className="steps">
        {steps.map(({ by, can, word, label }) => (
          <button key={by} type="button" disabled={!can} aria-label={label} onClick={() => move(name, by)}>
            {word}
          </button>
        ))}
      </span>
    </li>
  );
}
