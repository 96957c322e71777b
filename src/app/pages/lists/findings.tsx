import { useState } from "react";
import type { Change, FindingLine } from "../../../show/pages/findings.ts";
import { Link } from "wouter";
import { mergePath, underLens } from "../../address.ts";
import { useSome } from "../../parts/leaves/some.tsx";
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
/** So many are shown before the rest is asked for. */
const atOnce = 100;

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
              <RuleFold
                key={rule}
                rule={rule}
                findings={group}
                asOf={asOf}
                open={level === "error" || group.length <= few}
              />
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

/** The findings of one rule; those of a fold that was never opened are not made, where they are many. */
function RuleFold({ rule, findings, asOf, open }: Props & { readonly rule: string; readonly open: boolean }) {
  const [opened, setOpened] = useState(open);
  return (
    <details className="rule" open={open} onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary>
        <h3>{ruleName(rule)}</h3> <span className="count">{findings.length}</span>
      </summary>
      {(opened || findings.length <= atOnce) && <FindingList findings={findings} asOf={asOf} grouped />}
    </details>
  );
}

function groupedByRule(
  findings: readonly FindingLine[],
): readonly (readonly [string, readonly FindingLine[]])[] {
  const byRule = new Map<string, FindingLine[]>();
  for (const one of findings) {
    const those = byRule.get(one.rule);
    if (those) those.push(one);
    else byRule.set(one.rule, [one]);
  }
  return [...byRule];
}

/** Findings in a row: the rule, the sentence, the records, the place. */
export function FindingList({ findings, asOf, grouped = false }: Props & { readonly grouped?: boolean }) {
  const [some, more] = useSome(findings, atOnce);
  return (
    <>
      <ul className={grouped ? "findings grouped" : "findings"}>
        {some.map((one, place) => (
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
              {one.rule === "conflict-marks" && one.at && !one.elsewhere && (
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
      {more}
    </>
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
