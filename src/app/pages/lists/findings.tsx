import type { Change, FindingLine } from "../../../show/pages/findings.ts";
import { Link } from "wouter";
import { mergePath, underLens } from "../../address.ts";
import { RecordLink } from "../../parts/link.tsx";
import { mergeWords } from "../../words/desk/merge.ts";
import { words } from "../../words/index.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { ruleName } from "../../words/shown/findings.ts";

interface Props {
  readonly findings: readonly FindingLine[];
  readonly asOf: number | null;
}

/** As many findings can be read without headings between them. */
const few = 8;

/** All findings, errors first, with jumps to what they are about. */
export function FindingsPage({ findings, asOf }: Props) {
  if (findings.length === 0) return <p>{words.noFindings}</p>;
  const levels = (["error", "warning", "note"] as const).map((level) => {
    const those = findings.filter((one) => one.level === level);
    return (
      those.length > 0 && (
        <section key={level}>
          <h2 className="label">
            {words.levels[level]} <span className="count">{those.length}</span>
          </h2>
          {those.length <= few ? (
            <FindingList findings={those} asOf={asOf} />
          ) : (
            groupedByRule(those).map(([rule, group]) => (
              <details key={rule} className="rule" open={level === "error" || group.length <= few}>
                <summary>
                  <h3>{ruleName(rule)}</h3> <span className="count">{group.length}</span>
                </summary>
                <FindingList findings={group} asOf={asOf} grouped />
              </details>
            ))
          )}
        </section>
      )
    );
  });
  return (
    <>
      {levels}
      <Commands findings={findings} />
    </>
  );
}

function groupedByRule(
  findings: readonly FindingLine[],
): readonly (readonly [string, readonly FindingLine[]])[] {
  const rules = [...new Set(findings.map((one) => one.rule))];
  return rules.map((rule) => [rule, findings.filter((one) => one.rule === rule)]);
}

/** Findings in a row: the rule, the sentence, the records, the place. */
export function FindingList({ findings, asOf, grouped = false }: Props & { readonly grouped?: boolean }) {
  return (
    <ul className={grouped ? "findings grouped" : "findings"}>
      {findings.map((one, place) => (
        <li key={place}>
          {!grouped && <span className="how">{ruleName(one.rule)}</span>}
          <div>
            <p className="sentence">{inReadersWords(one.message)}</p>
            <p className="where">
              {one.about.slice(0, 6).map((record) => (
                <RecordLink key={record.id} id={record.id} text={record.text} asOf={asOf} />
              ))}
              {one.at && (
                <span>
                  <bdi>{one.at.file}</bdi>
                  {marks.comma}
                  {words.line} {one.at.line}
                </span>
              )}
            </p>
            {one.rule === "conflict-marks" && one.at && (
              <p>
                <Link href={underLens(mergePath(one.at.file), asOf)}>{mergeWords.open}</Link>
              </p>
            )}
            {one.mend !== null && <ChangeTable change={one.mend} file={one.at?.file ?? null} />}
            {one.accepted !== null && (
              <p className="quiet">
                {words.accepted} {one.accepted}
              </p>
            )}
          </div>
        </li>
      ))}
    </ul>
  );
}

/** Lines of the files as they are and as they would be. */
function ChangeTable({ change, file }: { readonly change: Change; readonly file: string | null }) {
  return (
    <table className="change">
      <caption>
        {change.choice ? words.changes.choice : words.mend} {inReadersWords(change.label)}
      </caption>
      <tbody>
        {change.lines.map((line, place) => (
          <tr key={place}>
            <th scope="row">
              {line.file !== (change.lines[place - 1]?.file ?? file) && (
                <span className="file">{line.file}</span>
              )}
              {line.line} {words.changes[line.as]}
            </th>
            <td>
              <code dir="auto">
                {line.head}
                {line.changed.trim() === "" ? line.changed : <strong>{line.changed}</strong>}
                {line.tail}
              </code>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The commands that make the changes that are shown, each once. */
export function Commands({ findings }: Pick<Props, "findings">) {
  const commands = [...new Set(findings.flatMap(({ mend }) => mend?.command ?? []))];
  if (commands.length === 0) return null;
  return (
    <section className="commands-told">
      <h2 className="label">{words.changes.commands}</h2>
      <p>{words.changes.how}</p>
      <ul>
        {commands.map((command) => (
          <li key={command}>
            <code>{command}</code>
          </li>
        ))}
      </ul>
    </section>
  );
}
