import type { InputField } from "../../../../../show/desk/workbench/input.ts";
import type { EntryLine } from "../../../../../show/numbers/entries.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { numberWords } from "../../../../words/shown/numbers.ts";
import { marks } from "../../../../words/reader/marks.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { useBench } from "../bench.ts";
import { asTyped, mapOf, textsOf } from "../fields/written.ts";

interface Props {
  readonly field: InputField;
}

/** How many records are in and how many are left out and why, said as it changes; and each with a box to tick it off. */
export function Lines({ field }: Props) {
  const { counts, lines, more } = field;
  const disputed = lines.filter((line) => line.why === null && field.disputed.includes(line.id)).length;
  return (
    <>
      <output className="count-line">
        <b>
          {counts.taken === 0
            ? words.count(0)
            : counts.taken === 1
              ? words.count(1)
              : words.count(counts.taken)}
        </b>
        {counts.left > 0 && `${marks.semicolon}${words.leftCount(counts.left)}: ${reasons(lines)}`}
        {". "}
        {counts.withheld > 0 && words.withheldCount(counts.withheld)}{" "}
        {disputed > 0 && words.disputedCount(disputed)}
      </output>
      {lines.length > 0 && (
        <details className="lines">
          <summary>{words.tick}</summary>
          <table className="ledger stack" aria-label={words.tick}>
            <thead>
              <tr>
                <th scope="col">{words.taken}</th>
                <th scope="col">{numberWords.evidence}</th>
                <th scope="col">{numberWords.recorded}</th>
                <th scope="col">{numberWords.source}</th>
                <th scope="col">{numberWords.state}</th>
              </tr>
            </thead>
            <tbody>
              {lines.map((line) => (
                <Line key={`${line.id} ${line.why === null ? "in" : "out"}`} field={field} line={line} />
              ))}
            </tbody>
          </table>
          {more > 0 && <p className="quiet">{words.more(more)}</p>}
        </details>
      )}
    </>
  );
}

/** `bound (3), another reading was taken (1)`. */
function reasons(lines: readonly EntryLine[]): string {
  const counts = new Map<string, number>();
  for (const { why } of lines) {
    if (why === null) continue;
    const said = inReadersWords(why);
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  const only = counts.size === 1;
  return [...counts].map(([why, n]) => (only ? why : words.reason(n, why))).join(marks.comma);
}

/** What is left out by itself, not by name, has no box: another setting takes it in. */
function Line({ field, line }: { readonly field: InputField; readonly line: EntryLine }) {
  const { draft, set } = useBench();
  const path = ["inputs", field.name];
  const written = mapOf(draft.values["inputs"])[field.name];
  const byName = textsOf(mapOf(written)["without"]).includes(line.id);
  const tick = (taken: boolean): void => {
    if (field.way === "by-hand")
      return set(
        path,
        textsOf(written).filter((id) => id !== line.id),
      );
    const others = textsOf(mapOf(written)["without"]).filter((id) => id !== line.id);
    const without = asTyped(taken ? others : [...others, line.id]);
    // Dates may stand as a list of things alone, which has no place for what is left out.
    if (field.kind === "dates" && mapOf(written)["of"] === undefined)
      return set(path, { of: asTyped(textsOf(written)) ?? "", without: without ?? "" });
    return set([...path, "without"], without);
  };
  const state = inReadersWords(line.why ?? (line.beaten ? numberWords.doesNotHold : words.taken));
  return (
    <tr>
      <td>
        {(line.why === null || byName) && (
          <input
            type="checkbox"
            aria-label={inReadersWords(line.text)}
            checked={line.why === null}
            onChange={(event) => tick(event.target.checked)}
          />
        )}
      </td>
      <th scope="row">
        <RecordLink id={line.id} text={inReadersWords(line.text)} asOf={null} />
      </th>
      <td className="numeral" dir="auto">
        {inReadersWords(line.written)}
      </td>
      <td dir="auto">{line.source && inReadersWords(line.source.said ?? line.source.text)}</td>
      <td className="wide">
        {line.mergedWith.length > 0
          ? `${state}, ${numberWords.merged(line.mergedWith.map(inReadersWords).join(marks.comma))}`
          : state}
        {field.disputed.includes(line.id) && <span className="clash"> {words.disputed}</span>}
      </td>
    </tr>
  );
}
