import type { Finding, Level } from "../../base/finding.ts";
import type { Acceptance } from "../../read/settings.ts";

/** A finding at the level the scholar gave its rule, or null when it is off; errors stay errors. */
export function levelled(finding: Finding, levels: ReadonlyMap<string, Level | "off">): Finding | null {
  const level = levels.get(finding.rule);
  if (level === undefined || finding.level === "error") return finding;
  return level === "off" ? null : { ...finding, level };
}

/** A finding with the scholar's reason for living with it: same rule, and about all that the acceptance names. */
export function accepted(finding: Finding, acceptances: readonly Acceptance[]): Finding {
  const why = acceptances.find(
    (one) => one.rule === finding.rule && one.about.every((id) => finding.about.includes(id)),
  )?.why;
  return why === undefined || finding.level === "error" ? finding : { ...finding, accepted: why };
}
