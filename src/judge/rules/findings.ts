import type { Finding } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import type { Run } from "../../derive/run.ts";
import { accepted, levelled } from "./acceptance.ts";
import type { View } from "./rule.ts";
import { rules } from "./index.ts";

/** All that the rules have to say, at the levels the scholar gave them, with what was accepted marked so. */
export function findingsOf(view: View): {
  readonly findings: readonly Finding[];
  readonly missing: readonly Run[];
} {
  const findings: Finding[] = [];
  const missing: Run[] = [];
  for (const rule of rules) {
    const found = rule.find(view);
    findings.push(...found.findings);
    missing.push(...(found.missing ?? []));
  }
  return { findings: findings.sort(inPlace), missing };
}

/** Settings applied to findings of any room: levels, `off`, acceptances. */
export function settled(
  findings: readonly Finding[],
  settings: View["graph"]["settings"],
): readonly Finding[] {
  return findings
    .map((one) => levelled(one, settings.rules))
    .filter((one) => one !== null)
    .map((one) => accepted(one, settings.accept));
}

/** By file, place, rule and message: one order whatever the order of the files. */
export function inPlace(a: Finding, b: Finding): number {
  return (
    byText(a.at?.file ?? "", b.at?.file ?? "") ||
    (a.at?.start ?? 0) - (b.at?.start ?? 0) ||
    byText(a.rule, b.rule) ||
    byText(a.message, b.message)
  );
}
