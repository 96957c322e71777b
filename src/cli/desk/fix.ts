import type { Finding, Level } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import { planned } from "../../base/text/edit.ts";
import type { Checked, Model } from "../../build.ts";
import { ruleDocs } from "../../judge/rules/index.ts";
import { shownFindings } from "../../show/withhold.ts";
import { evaluated } from "../evaluated.ts";
import type { Asked, Evaluated } from "../evaluated.ts";
import { Stop } from "../fault.ts";
import { fixText, many } from "../print/fix.ts";
import type { Mending } from "../print/fix.ts";
import { atDesk } from "./at-desk.ts";

/** What the user asked of the changes that mend findings. */
export interface Fixing {
  readonly fix?: boolean;
  readonly write?: boolean;
  readonly rule?: string;
}

/** Refuses options that say nothing without `--fix` or beside it, and a rule that does not exist. */
export function checkFixing(options: Fixing & Beside): void {
  const { fix, write, rule } = options;
  if (!fix && (write || rule !== undefined)) {
    throw new Stop(`Unexpected ${write ? "--write" : "--rule"} alone, expected it together with --fix`);
  }
  const other = fix ? besides.find((name) => options[name] !== undefined) : undefined;
  if (other !== undefined) throw new Stop(`Unexpected --fix together with --${other}, expected one of them`);
  if (fix && options.format === "sarif")
    throw new Stop("Unexpected --format sarif, expected text or json with --fix");
  const names = ruleDocs.map((one) => one.id);
  if (rule === undefined || names.includes(rule)) return;
  const near = nearest(rule, names);
  const expected = near.length > 0 ? near.join(" or ") : "the name of a rule as findings give it";
  throw new Stop(`Unknown rule \`${rule}\`, expected ${expected}`);
}

const besides = ["explain", "standpoints", "history", "suppose"] as const;

/** What `check` may also be asked for, but not at the same time. */
type Beside = { readonly [name in (typeof besides)[number] | "format"]?: string | boolean };

/** A corpus as it is after what was asked for, and what there is to say about the changes. */
export async function mended(
  folder: string,
  options: Asked & Fixing,
): Promise<Evaluated & { readonly lines: readonly string[] }> {
  const before = await evaluated(folder, options);
  const mending = mendingOf(before.checked, options.rule);
  const write = options.write === true && mending.changes.length > 0;
  if (write) written(folder, mending);
  const now = write ? await evaluated(folder, options) : before;
  const lines = fixText(mending, before.texts, write);
  return { ...now, lines: write ? [...lines, leftText(now.checked)] : lines };
}

/** The changes that mend findings with certainty, in the order of the findings; of one rule, its choices as well. What is accepted stays. */
function mendingOf({ model, findings }: Checked<Model>, rule: string | undefined): Mending {
  const wanted = shownFindings(model?.graph ?? null, findings).flatMap((one) =>
    one.fix !== null && one.accepted === null && (rule === undefined || one.rule === rule)
      ? [{ for: one, fix: one.fix }]
      : [],
  );
  const certain = wanted.filter(({ fix }) => rule !== undefined || fix.choice === undefined);
  const choices = wanted.filter((one) => !certain.includes(one)).map((one): Finding => one.for);
  return { ...planned(certain, model?.files ?? new Map<string, string>()), choices };
}

/** What the step is called where it can be undone. */
const mendingStep = "Mend what can be mended with certainty";

function written(folder: string, { changes }: Mending): void {
  atDesk(folder, (desk) => desk.edit(mendingStep, changes));
}

function leftText({ model, findings }: Checked<Model>): string {
  const shown = shownFindings(model?.graph ?? null, findings);
  const level = (name: Level): string => many(shown.filter((one) => one.level === name).length, name);
  return `Left: ${level("error")}, ${level("warning")}, ${level("note")}.`;
}
