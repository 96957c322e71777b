import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Report } from "./schema.ts";

/** What a rule is called in the log's list of rules. */
export interface RuleTitle {
  readonly id: string;
  readonly title: Text;
}

/** The findings as a SARIF 2.1.0 log (OASIS 2020): one run, one result for each finding. */
export function sarifOf(report: Report, version: string, rules: readonly RuleTitle[]): object {
  const used = new Set(report.findings.map((finding) => finding.rule));
  return {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: {
          driver: {
            name: "Variorum",
            version,
            rules: rules
              .filter((rule) => used.has(rule.id))
              .map((rule) => ({ id: rule.id, shortDescription: { text: inEnglish(rule.title) } })),
          },
        },
        columnKind: "utf16CodeUnits",
        results: report.findings.map((finding) => ({
          ruleId: finding.rule,
          level: finding.level,
          message: { text: finding.message },
          locations: finding.at ? [locationOf(finding.at)] : [],
          suppressions:
            finding.accepted === null ? [] : [{ kind: "external", justification: finding.accepted }],
        })),
      },
    ],
  };
}

function locationOf(at: NonNullable<Report["findings"][number]["at"]>): object {
  return {
    physicalLocation: {
      artifactLocation: { uri: at.file.split("/").map(encodeURIComponent).join("/") },
      region: { startLine: at.line, startColumn: at.column, endLine: at.endLine, endColumn: at.endColumn },
    },
  };
}
