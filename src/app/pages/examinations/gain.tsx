import type { GainTable } from "../../../show/plan/gain.ts";
import { PageLink } from "../../parts/link.tsx";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  readonly gain: GainTable;
  readonly costsIn: string;
  readonly asOf: number | null;
}

/** What an examination is expected to tell: bits, the same for its cost, and how probable each answer is before and after. */
export function Gain({ gain, costsIn, asOf }: Props) {
  const { question, bits, perCost, answers, prior, outcomes } = gain;
  return (
    <details className="gain">
      <summary>
        {words.gain(bits, inReadersWords(question.text))}
        {perCost !== null && (
          <span>
            {marks.semicolon}
            {words.perCost(perCost.bits, perCost.place, costsIn)}
          </span>
        )}
      </summary>
      <p className="quiet">
        {words.gainOf}: <PageLink page="question" id={question.id} text={question.text} asOf={asOf} />{" "}
        {words.bit}
      </p>
      <table className="ledger posterior">
        <thead>
          <tr>
            <th scope="col">{words.outcome}</th>
            {answers.map((one) => (
              <th scope="col" key={one.id} dir="auto">
                {inReadersWords(one.text)}
              </th>
            ))}
            <th scope="col">{words.left}</th>
          </tr>
        </thead>
        <tbody>
          <Row head={words.now} p={null} cells={prior.answers} bits={prior.bits} answers={answers} />
          {outcomes.map((one) => (
            <Row
              key={inReadersWords(one.text)}
              head={inReadersWords(one.text)}
              p={one.p}
              cells={one.posterior}
              bits={one.bits}
              answers={answers}
            />
          ))}
        </tbody>
      </table>
    </details>
  );
}

function Row({
  head,
  p,
  cells,
  bits,
  answers,
}: {
  readonly head: string;
  readonly p: string | null;
  readonly cells: readonly string[];
  readonly bits: string;
  readonly answers: GainTable["answers"];
}) {
  return (
    <tr>
      <th scope="row">
        <span className={p === null ? undefined : "sentence"} dir="auto">
          {head}
        </span>
        {p !== null && (
          <span className="quiet">
            {words.probability} <bdi>{p}</bdi>
          </span>
        )}
      </th>
      {answers.map((answer, at) => (
        <td className="numeral" key={answer.id}>
          <span className="narrowly">{inReadersWords(answer.text)} </span>
          {cells[at] ?? words.cannotBe}
        </td>
      ))}
      <td className="numeral">
        <span className="narrowly">{words.left} </span>
        <bdi>{bits}</bdi>
      </td>
    </tr>
  );
}
