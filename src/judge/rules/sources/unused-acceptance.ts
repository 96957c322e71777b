import { finding } from "../../../base/finding.ts";
import type { Finding, Fix } from "../../../base/finding.ts";
import { nearest } from "../../../base/nearest.ts";
import { slipFor } from "../../../base/text/slip.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { spanOf } from "../../../read/record.ts";
import type { Step } from "../../../read/yaml/tree.ts";
import { covers } from "../acceptance.ts";
import { chained } from "../../../base/text/said/rows.ts";
import type { Rule } from "../rule.ts";

/** Told when all other rules have been asked: what the settings say of findings that do not exist. */
export const unusedAcceptance: Rule = {
  id: "unused-acceptance",
  level: "note",
  title: say`The settings accept a finding, or set the level of a rule, and nothing comes of it.`,
  doc: say`The record may have been mended since, or the name of the rule be misspelt. Take the line out, or mend the name: else a later finding of that kind is accepted before anybody has looked at it. Errors stay errors: they are mended, not accepted.`,
  ofTheRecord: true,
  find: () => ({ findings: [] }),
};

/** The rules as the settings may name them, and those whose findings are always errors. */
export interface RuleNames {
  readonly all: readonly string[];
  readonly errors: readonly string[];
}

/** Acceptances that accept nothing, and levels of rules that do not exist or that no level changes. */
export function unusedSettings(
  { settings }: Graph,
  findings: readonly Finding[],
  { all, errors }: RuleNames,
): readonly Finding[] {
  const place = { file: settings.file, node: settings.node };
  const tell = (message: Text, path: readonly Step[], fix: Fix | null = null): Finding =>
    finding(unusedAcceptance.id, message, spanOf(place, ...path), { level: "note", fix });
  const unknown = (rule: string): Text => {
    const near = nearest(rule, all);
    if (near.length === 0)
      return say`Unknown rule \`${rule}\`, expected the name of a rule as findings give it`;
    return say`Unknown rule \`${rule}\`, expected ${chained(near, (before, next) => say`${before} or ${next}`)}`;
  };
  const accepting = settings.accept.flatMap((one, at): readonly Finding[] => {
    const path = ["accept", at, "rule"];
    if (!all.includes(one.rule)) {
      const meant = slipFor(one.rule, all);
      const span = spanOf(place, ...path);
      const bare = span.end - span.start === one.rule.length;
      const fix =
        meant !== null && bare ? { label: say`Write ${meant}`, edits: [{ ...span, text: meant }] } : null;
      return [tell(unknown(one.rule), path, fix)];
    }
    if (errors.includes(one.rule))
      return [
        tell(
          say`Unexpected acceptance of \`${one.rule}\`, expected errors to be mended: they stay errors`,
          path,
        ),
      ];
    return findings.some((found) => covers(one, found))
      ? []
      : [tell(say`Unused acceptance of \`${one.rule}\`, expected a finding that it accepts`, path)];
  });
  const levels = [...settings.rules.keys()].flatMap((rule): readonly Finding[] => {
    if (!all.includes(rule)) return [tell(unknown(rule), ["rules", rule])];
    return errors.includes(rule)
      ? [tell(say`Unexpected level of \`${rule}\`, expected none: errors stay errors`, ["rules", rule])]
      : [];
  });
  return [...accepting, ...levels];
}
