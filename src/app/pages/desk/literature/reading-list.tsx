import { useRef, useState } from "react";
import type { KeyboardEvent } from "react";
import { papersOf } from "../../../../show/desk/papers/papers.ts";
import { statusAction } from "../../../../show/desk/literature/reading-list.ts";
import type { ReadingLine, Status } from "../../../../show/desk/literature/reading-list.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useEnclosed } from "../../../model/enclosed.ts";
import { useActions } from "../../../parts/actions.tsx";
import { literatureWords as words } from "../../../words/reading/literature.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { ToImport } from "../import/to-import.tsx";
import { chosenLines, countsOf, today } from "./choosing.ts";
import { SourceRow } from "./source-row.tsx";
import { showName, StatusChoice, statusName } from "./status.tsx";

interface Props {
  readonly sources: readonly ReadingLine[];
  readonly address: ReturnType<typeof useAddress>;
}

/** So many sources are drawn at once; a list of thousands is narrowed, or asked for whole. */
const atOnce = 300;

const letters: Readonly<Record<string, Status>> = {
  t: "to-read",
  r: "read",
  n: "nothing-in-it",
  f: "not-found",
};
const orders = { year: words.byYear, author: words.byAuthor, status: words.byStatus } as const;
const isOrder = (name: string | null): name is keyof typeof orders =>
  name !== null && Object.hasOwn(orders, name);

/** The sources with what became of each, changed one by one or several at once. */
export function ReadingList({ sources, address }: Props) {
  const { asOf, query, toLook } = address;
  const desk = useDesk();
  const enclosed = useEnclosed();
  const [filter, setFilter] = useState("");
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [most, setMost] = useState(atOnce);
  const [trouble, setTrouble] = useState<string | null>(null);
  const narrow = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLUListElement>(null);
  useActions(words.title, [{ name: words.filter, key: null, run: () => narrow.current?.focus() }]);
  if (sources.length === 0)
    return (
      <>
        <p className="sentence">{words.none}</p>
        <ToImport asOf={asOf} />
      </>
    );
  const given = query.get("order");
  const order = isOrder(given) ? given : "year";
  const show = query.get("show") ?? "all";
  const lines = chosenLines(sources, { show, words: filter, order });
  const papers = papersOf(
    sources.map((one) => one.key),
    enclosed?.map((one) => one.file) ?? [],
  );
  const canSave = desk.state.readOnly === null;

  const set = async (keys: readonly string[], status: Status | null): Promise<void> => {
    const meant = sources.filter((one) => keys.includes(one.key) && one.status !== status);
    if (!canSave || meant.length === 0) return;
    const called = words.step(meant.length, inReadersWords(statusName(status)));
    const saved = await desk.save({ ...statusAction(meant, status, today()), called });
    setTrouble("problem" in saved ? saved.problem : null);
  };
  const onKey = (event: KeyboardEvent<HTMLInputElement>, line: ReadingLine): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const status = letters[event.key.toLowerCase()];
    if (status !== undefined) void set(chosen.has(line.key) ? [...chosen] : [line.key], status);
    else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      const boxes = [...(list.current?.querySelectorAll<HTMLInputElement>("input[type=checkbox]") ?? [])];
      boxes[boxes.indexOf(event.currentTarget) + (event.key === "ArrowDown" ? 1 : -1)]?.focus();
    } else return;
    event.preventDefault();
  };
  const choose = (key: string, isChosen: boolean): void => {
    const next = new Set(chosen);
    if (isChosen) next.add(key);
    else next.delete(key);
    setChosen(next);
  };

  return (
    <div className="reading-list">
      {canSave && <ToImport asOf={asOf} />}
      <div className="list-tools">
        <label>
          {words.show}
          <select value={show} onChange={(event) => toLook({ show: event.target.value }, "replace")}>
            {countsOf(sources).map(([name, count]) => (
              <option key={name} value={name}>
                {inReadersWords(showName(name))} ({count})
              </option>
            ))}
          </select>
        </label>
        <label>
          {words.order}
          <select value={order} onChange={(event) => toLook({ order: event.target.value }, "replace")}>
            {Object.entries(orders).map(([name, word]) => (
              <option key={name} value={name}>
                {word}
              </option>
            ))}
          </select>
        </label>
        <label className="grow">
          {words.filter}
          <input
            ref={narrow}
            type="search"
            value={filter}
            onChange={(event) => setFilter(event.target.value)}
          />
        </label>
      </div>
      {canSave && <p className="quiet keys">{words.keys}</p>}
      {chosen.size > 0 && (
        <p className="chosen">
          {words.chosen(chosen.size)}{" "}
          <StatusChoice status={null} label={words.setTo} onSet={(to) => void set([...chosen], to)} />
          <button type="button" onClick={() => setChosen(new Set())}>
            {words.unchoose}
          </button>
        </p>
      )}
      {trouble !== null && <p role="alert">{trouble}</p>}
      <output className="counts">{lines.length === 0 ? words.nothingSo : words.counts(lines.length)}</output>
      <ul className="sources" ref={list}>
        {lines.slice(0, most).map((line) => (
          <SourceRow
            key={line.key}
            line={line}
            asOf={asOf}
            hasPaper={papers.has(line.key)}
            canSave={canSave}
            isChosen={chosen.has(line.key)}
            onChoose={(isChosen) => choose(line.key, isChosen)}
            onKey={(event) => onKey(event, line)}
            onSet={(status) => void set([line.key], status)}
          />
        ))}
      </ul>
      {lines.length > most && (
        <button type="button" onClick={() => setMost(lines.length)}>
          {words.more(lines.length - most)}
        </button>
      )}
    </div>
  );
}
