import type { Text } from "../../../base/text/said/said.ts";
import { withoutStop } from "../../../link/names/label.ts";
import type { NumberPage as Page } from "../../../show/numbers/number.ts";
import { RecordLink } from "../../parts/link.tsx";
import { words } from "../../words/index.ts";
import { printed, numberName, numberWords } from "../../words/shown/numbers.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { Allow } from "./allow.tsx";
import { Bearings } from "./bearings.tsx";
import { Entries } from "./entries.tsx";
import { Figure } from "./figure.tsx";
import { Losses } from "./tried/losses.tsx";
import { LooksTold } from "./tried/looks.tsx";
import { Method } from "./method.tsx";
import { Turns } from "./tried/turns.tsx";
import { ToWorkbench } from "../desk/workbench/to-workbench.tsx";
import { Wanted } from "./wanted.tsx";

interface Props {
  readonly number: Page;
  readonly asOf: number | null;
}

/** One computed number: its figure, what it says and on what terms, what would turn it, and all it was computed on. */
export function NumberPage({ number, asOf }: Props) {
  const { status, why, sentence, figure, cautions } = number;
  return (
    <article className="number">
      <div className="beside">
        <div className="main">
          <h1 dir="auto">{inReadersWords(number.title)}</h1>
          {sentence !== null && <p className="lead">{printed(inReadersWords(sentence))}</p>}
          {status !== "computed" && (
            <output className="lead">
              {status === "pending"
                ? numberWords.pendingLong
                : `${capital(numberWords.status[status])}: ${why === null ? "" : withoutStop(inReadersWords(why))}.`}
            </output>
          )}
          {number.notAllowed !== null && <Allow file={number.notAllowed} />}
          <p className="crossing">
            <RecordLink id={number.id} text={words.recordSheet} asOf={asOf} />
          </p>
          <ToWorkbench of={number.id} asOf={asOf} />
          {figure !== null && <Figure shown={figure} id={number.id} />}
        </div>
        <aside>
          <Bearings bearings={number.bearings} asOf={asOf} />
          {number.turns !== null && <Turns turns={number.turns} asOf={asOf} />}
          {number.losses !== null && <Losses losses={number.losses} asOf={asOf} />}
        </aside>
      </div>
      {(cautions.met.length > 0 || cautions.general.length > 0) && (
        <section className="cautions">
          <h2 className="label">{numberWords.takeCare}</h2>
          <CautionList title={numberWords.metHere} texts={cautions.met} />
          <CautionList title={numberWords.general} texts={cautions.general} />
        </section>
      )}
      {number.numbers.length > 0 && <Numbers number={number} asOf={asOf} />}
      <Entries entries={number.entries} asOf={asOf} />
      <Wanted lines={number.wanted} asOf={asOf} />
      <Method number={number} asOf={asOf} />
    </article>
  );
}

function CautionList({ title, texts }: { readonly title: string; readonly texts: readonly Text[] }) {
  if (texts.length === 0) return null;
  return (
    <div>
      <h3 className="quiet">{title}</h3>
      <ul>
        {texts.map(inReadersWords).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

function Numbers({ number: { numbers, looks }, asOf }: Props) {
  return (
    <section>
      <h2 className="label">{numberWords.allNumbers}</h2>
      <table className="ledger stack">
        <thead>
          <tr>
            <th scope="col">{numberWords.name}</th>
            <th scope="col">{numberWords.value}</th>
            <th scope="col">{numberWords.interval}</th>
            <th scope="col">{numberWords.what}</th>
          </tr>
        </thead>
        <tbody>
          {numbers.map((line) => (
            <tr key={line.name}>
              <th scope="row">{numberName(line.name)}</th>
              <td className="numeral">
                <bdi>{line.value}</bdi>
              </td>
              <td className="numeral">
                <bdi>{line.interval !== null && inReadersWords(line.interval)}</bdi>
              </td>
              <td className="wide">
                {inReadersWords(line.doc)}
                {numberName(line.name) !== line.name && ` ${numberWords.inFile(line.name)}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {looks.map((look) => (
        <LooksTold key={look.claim.id} looks={look} asOf={asOf} />
      ))}
    </section>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
