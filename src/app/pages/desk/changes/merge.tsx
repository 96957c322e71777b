import { Link } from "wouter";
import { answersIn, answersWritten, ownIn, ownWritten } from "../../../../show/desk/changes/merging/told.ts";
import type { Choice, MergeClash, MergePage as Data } from "../../../../show/desk/changes/merging/told.ts";
import type { FieldRow } from "../../../../show/pages/pieces.ts";
import { mergePath, underLens } from "../../../address.ts";
import type { useAddress } from "../../../address.ts";
import { Looks } from "../../../parts/places/looks.tsx";
import { kindName } from "../../../words/desk/kinds.ts";
import { fieldWord } from "../../../words/index.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { mergeWords as words } from "../../../words/desk/merge.ts";
import { Alone } from "./alone.tsx";
import { WriteMerged } from "./write-merged.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** The merge of a file in which two versions stand: what clashes is asked for, the rest is shown as it was put together. */
export function MergePage({ page: { file, marked }, address }: Props) {
  const { asOf, query, toLook } = address;
  if (!marked)
    return (
      <>
        <h1>{words.title}</h1>
        <p className="lead">{words.noMarks(file)}</p>
        <p className="apart">
          <Link href={underLens("/changes", asOf)}>{words.toChanges}</Link>
        </p>
      </>
    );
  const { clashes, by, byRecord, names, withheld } = marked;
  const answers = answersIn(clashes, query.get("answers") ?? "");
  const answer = (next: readonly (Choice | null)[]): void =>
    toLook({ answers: answersWritten(next) }, "replace");
  const own = ownIn(query.get("own") ?? "");
  const write = (place: number, text: string): void =>
    toLook({ own: ownWritten(new Map([...own, [place, text]])) }, "replace");
  const left = answers.filter((one) => one === null).length;
  const path = mergePath(file);
  return (
    <>
      <h1>{words.title}</h1>
      <p className="lead">{words.lead(file, clashes.length)}</p>
      {byRecord ? (
        <Looks
          label={words.looks}
          looks={[
            [path, words.byRecord, by === "record"],
            [`${path}?by=lines`, words.byLines, by === "lines"],
          ]}
          asOf={asOf}
        />
      ) : (
        <p className="quiet apart">{words.onlyLines}</p>
      )}
      {withheld && <p className="apart">{words.withheld}</p>}
      {clashes.length > 1 && (
        <p className="apart throughout">
          {(["mine", "theirs"] as const).map((side) => (
            <button key={side} type="button" onClick={() => answer(clashes.map(() => side))}>
              {words.throughout[side]}
            </button>
          ))}
        </p>
      )}
      <ol className="versions">
        {clashes.map((clash, place) => (
          <li key={place}>
            <Clash
              clash={clash}
              name={`clash-${place}`}
              names={names}
              answered={answers[place] ?? null}
              answer={(one) => answer(answers.with(place, one))}
              own={own.get(place) ?? clash.typed ?? ""}
              write={(text) => write(place, text)}
            />
          </li>
        ))}
      </ol>
      <Alone alone={marked.alone} />
      <WriteMerged
        file={file}
        marked={marked}
        left={left}
        isMade={marked.answered === answersWritten(answers) && marked.own === (query.get("own") ?? "")}
      />
    </>
  );
}

interface ClashProps {
  readonly clash: MergeClash;
  /** Of the group of choices. */
  readonly name: string;
  readonly names: { readonly mine: string; readonly theirs: string };
  readonly answered: Choice | null;
  readonly answer: (one: Choice) => void;
  /** The own words in place of both readings. */
  readonly own: string;
  readonly write: (text: string) => void;
}

function Clash({ clash, name, names, answered, answer, own, write }: ClashProps) {
  const { kind, text, field, base, choices, asTyped } = clash;
  return (
    <fieldset className="version">
      <legend>
        <span className="kind">{kindName(kind)}</span> <span dir="auto">{inReadersWords(text)}</span>
        {field !== null && <span className="field"> · {fieldWord(field)}</span>}
      </legend>
      {base !== null && (
        <p className="before">
          <span className="word">{words.before}</span>
          <Reading rows={base} asTyped={asTyped} none={words.nothingBefore} />
        </p>
      )}
      {choices.map((one) => (
        <label key={one}>
          <input type="radio" name={name} checked={answered === one} onChange={() => answer(one)} />
          <span className="word">
            {words.choice[one]}{" "}
            {(one === "mine" || one === "theirs") && names[one] !== "" && (
              <bdi className="quiet">{names[one]}</bdi>
            )}
          </span>
          {(one === "mine" || one === "theirs") && (
            <Reading rows={clash[one]} asTyped={asTyped} none={words.nothing} />
          )}
        </label>
      ))}
      {answered === "own" && (
        <p className="own">
          <textarea
            aria-label={words.ownWords}
            dir="auto"
            rows={Math.min(12, own.split("\n").length + 1)}
            value={own}
            onChange={(event) => write(event.currentTarget.value)}
          />
        </p>
      )}
    </fieldset>
  );
}

interface ReadingProps {
  readonly rows: readonly FieldRow[];
  readonly asTyped: boolean;
  /** What is said where it says nothing. */
  readonly none: string;
}

/** One reading of what clashes. */
function Reading({ rows, asTyped, none }: ReadingProps) {
  if (rows.length === 0) return <span className="quiet">{none}</span>;
  return (
    <span className={asTyped ? "rows typed" : "rows sentence"}>
      {rows.map((row, place) => (
        <span className="line" key={place} dir="auto">
          {row.label !== null && <span className="part">{inReadersWords(row.labelSaid ?? row.label)}: </span>}
          {row.pieces.map((piece) => inReadersWords(piece.said ?? piece.text)).join("") || " "}
        </span>
      ))}
    </span>
  );
}
