import { existsSync } from "node:fs";
import { Command, CommanderError, InvalidArgumentError } from "commander";
import { version } from "../../package.json" with { type: "json" };
import type { Finding } from "../base/finding.ts";
import { nearest } from "../base/nearest.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { ruleDocs } from "../judge/rules/index.ts";
import { historyReport } from "../show/judged/history/report.ts";
import { planReport } from "../show/plan/report.ts";
import { reportOf } from "../show/report/report.ts";
import { sarifOf } from "../show/report/sarif.ts";
import { standpointsReport } from "../show/judged/standpoints/report.ts";
import { shownFindings, withheldIn } from "../show/withhold.ts";
import { countsText, findingsText, questionsText } from "./print/check.ts";
import { Stop } from "./fault.ts";
import { historyText } from "./print/history.ts";
import { numbersText } from "./print/numbers.ts";
import { restingText } from "./print/resting.ts";
import { checkFixing, mended } from "./desk/fix.ts";
import type { Fixing } from "./desk/fix.ts";
import { unsteered } from "./print/paint.ts";
import { planText } from "./print/plan.ts";
import { addNew, addOpen } from "./start/command.ts";
import { evaluated } from "./evaluated.ts";
import { addImport } from "./import/command.ts";
import { addMerge } from "./merge/command.ts";
import { addWrite } from "./write/command.ts";
import type { Asked } from "./evaluated.ts";
import { standpointsText } from "./print/standpoints.ts";
import { lensText } from "./print/lens.ts";
import { whyText } from "./print/why.ts";

interface CheckOptions extends Asked, Fixing {
  readonly json?: boolean;
  readonly format?: string;
  readonly explain?: string;
  readonly standpoints?: boolean;
  readonly failOn?: string;
}

const say = (lines: readonly string[]): void => void process.stdout.write(unsteered(`${lines.join("\n")}\n`));

const oneOf =
  (...words: readonly string[]) =>
  (given: string): string => {
    if (words.includes(given)) return given;
    throw new InvalidArgumentError(`Expected ${words.join(" or ")}.`);
  };

const supposing = ["--suppose <outcome>", "as if an examination had ended so: EXAMINATION:OUTCOME"] as const;

const program = new Command("variorum")
  .description("Weighs a contested question: who holds what, on what evidence, and what follows from it.")
  .version(version)
  .helpOption("-h, --help", "show this help")
  .helpCommand("help [command]", "show the help of a command")
  .exitOverride()
  .showSuggestionAfterError(true)
  .configureOutput({ writeOut: (text) => process.stdout.write(text), writeErr: () => undefined })
  .addHelpText(
    "after",
    `
A corpus is a folder with a corpus.yaml; without one named, the folder you stand in.

Examples:
  variorum demo-corpus                     open a corpus in the browser
  variorum check demo-corpus               what is contradicted, what is unsupported, and why
  variorum check demo-corpus --as-of 1951  as the dispute stood then
  variorum check demo-corpus --suppose look-at-the-casts:round-ends
                                           as if the look had been taken
  variorum check demo-corpus --fix         what can be mended with certainty, line by line
  variorum check demo-corpus --json        the same for a script
  variorum plan demo-corpus                which examination would decide most

Exit codes: 0 no error among the findings, 1 at least one, 2 nothing could be done, 3 a fault of the program.`,
  );

addOpen(program);

withCorpus("check", "read, compute and evaluate; print the findings and how the answers stand")
  .option(...supposing)
  .option("--explain <id>", "why a claim, an argument or a piece of evidence has its standing")
  .option("--standpoints", "the coherent standpoints: what tells them apart, and whom each fits")
  .option("--history", "the dispute publication by publication, and what each changed")
  .option("--fix", "show the changes that certainly mend a finding; nothing is written")
  .option("--write", "with --fix: make them in the files")
  .option("--rule <rule>", "with --fix: those of one rule only, its choices as well")
  .option("--format <format>", "text, json or sarif", oneOf("text", "json", "sarif"))
  .option(
    "--fail-on <level>",
    "exit with 1 from this level on: error or warning",
    oneOf("error", "warning"),
    "error",
  )
  .action(check);

withCorpus("compute", "run the derivations; print their numbers")
  .option(...supposing)
  .action(async (folder: string, options: CheckOptions) => {
    const { checked, texts } = await evaluated(folder, options);
    if (options.json) printJson(reportOf(checked.model, checked.findings, texts));
    else if (checked.model) say([...lensText(checked.model), ...numbersText(checked.model)]);
    else say(findingsText(checked.findings, texts));
    if (checked.model) pointToErrors(checked.findings);
    process.exitCode = codeFor(checked.findings, "error");
  });

withCorpus("plan", "which examination would decide most")
  .option("--all", "print every examination that the record suggests, not only the first ten")
  .action(async (folder: string, options: CheckOptions & { readonly all?: boolean }) => {
    const { checked, texts, plugins } = await evaluated(folder, { ...options, plan: true });
    const { model, findings } = checked;
    if (options.json) printJson(reportOf(model, findings, texts, model?.plan ? planReport(model.plan) : {}));
    else if (model?.plan)
      say([...lensText(model), ...planText(model, plugins, model.plan, options.all === true)]);
    else say(findingsText(findings, texts));
    if (model) pointToErrors(findings);
    process.exitCode = codeFor(findings, "error");
  });

addImport(program);
addMerge(program);
addWrite(program);

program
  .command("explain")
  .description("what a finding means and what to do")
  .argument("<rule>", "the rule, as findings name it")
  .action((name: string) => {
    const rule = ruleDocs.find((one) => one.id === name);
    if (!rule) {
      const near = nearest(
        name,
        ruleDocs.map((one) => one.id),
      );
      const expected =
        near.length > 0 ? near.join(" or ") : `one of ${ruleDocs.map((one) => one.id).join(", ")}`;
      throw new Stop(`Unknown rule \`${name}\`, expected ${expected}`);
    }
    say([`${rule.id} (${rule.level})`, "", inEnglish(rule.title), "", inEnglish(rule.doc)]);
  });

addNew(program);

function withCorpus(name: string, description: string): Command {
  return program
    .command(name)
    .description(description)
    .argument("[corpus]", "the folder of the corpus", ".")
    .option("--json", "print one JSON document")
    .option("--as-of <year>", "what was in print by the end of that year: 1951, or 480 BC")
    .option(
      "--rests-on",
      "what every claim rests on; of answers also which losses together end them, and the lines that lead there",
    )
    .option("--no-memo", "compute every number anew")
    .option("--allow-plugin <name>", "let this plug-in of the corpus run, as its file now is");
}

async function mend(folder: string, options: CheckOptions): Promise<void> {
  const { checked, texts, lines } = await mended(folder, options);
  const asJson = options.json === true || options.format === "json";
  if (asJson) printJson(reportOf(checked.model, checked.findings, texts));
  else say(lines);
  process.exitCode = codeFor(checked.findings, options.failOn ?? "error");
}

async function check(folder: string, options: CheckOptions): Promise<void> {
  checkFixing(options);
  if (options.fix) return mend(folder, options);
  const format = options.json ? "json" : (options.format ?? "text");
  checkLooks(options, format);
  const { checked, texts } = await evaluated(folder, options);
  const { model, findings } = checked;
  if (format !== "text") {
    const more = {
      ...(model?.history ? { history: historyReport(model.history) } : {}),
      ...(model && options.standpoints ? { standpoints: standpointsReport(model) } : {}),
    };
    const report = reportOf(model, findings, texts, more);
    printJson(format === "json" ? report : sarifOf(report, version, ruleDocs));
  } else if (options.explain !== undefined && model) {
    const lines = whyText(model, options.explain);
    const withheld = withheldIn(model.graph);
    const known = [...model.judgement.standings.keys()].filter((id) => !withheld(id));
    if (lines.length === 0) throw new Stop(unknownId(options.explain, known));
    say([...lensText(model), ...lines]);
  } else if (model && options.standpoints) {
    say([...lensText(model), ...standpointsText(model)]);
  } else if (model?.history) {
    say([...lensText(model), ...historyText(model.history)]);
  } else if (model) {
    const shown = shownFindings(model.graph, findings);
    say([
      ...lensText(model),
      ...findingsText(shown, texts),
      ...questionsText(model),
      ...restingText(model),
      countsText(model, shown),
    ]);
  } else say(findingsText(findings, texts));
  process.exitCode = codeFor(findings, options.failOn ?? "error");
}

/** What would be printed in place of one another is asked for one at a time. */
function checkLooks(options: CheckOptions, format: string): void {
  if (options.json && options.format !== undefined && options.format !== "json")
    throw new Stop(`Unexpected --format ${options.format} beside --json, expected one of them`);
  if (options.explain !== undefined && format !== "text")
    throw new Stop("Unexpected --explain beside another format, expected it for text alone");
  const looks = (["explain", "standpoints", "history"] as const).filter((one) => options[one]);
  if (format === "text" && looks.length > 1)
    throw new Stop(`Unexpected ${looks.map((one) => `--${one}`).join(" and ")}, expected one of them`);
}

/** Where the result leaves errors out, standard error says where they are told. */
function pointToErrors(findings: readonly Finding[]): void {
  const errors = findings.filter((one) => one.level === "error").length;
  if (errors === 0) return;
  const many = errors === 1 ? "One error" : `${errors} errors`;
  process.stderr.write(`${many} among the findings; variorum check prints them\n`);
}

function unknownId(id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  const hint =
    near.length > 0
      ? near.map((one) => `\`${one}\``).join(" or ")
      : "the id of a claim, an argument or evidence";
  return `Unknown id \`${id}\`, expected ${hint}`;
}

function printJson(value: object): void {
  // Written out, a sign in a text is the same sign for whoever reads the JSON.
  process.stdout.write(unsteered(`${JSON.stringify(value, null, 2)}\n`));
}

function codeFor(findings: readonly Finding[], level: string): 0 | 1 {
  const bad = (one: Finding): boolean =>
    one.level === "error" || (level === "warning" && one.level === "warning" && one.accepted === null);
  return findings.some(bad) ? 1 : 0;
}

/** A first word that is neither a command nor an option is a folder to open. */
function argumentsOf(given: readonly string[]): readonly string[] {
  const [first, second, ...others] = given;
  // The kinds of what can be written tell their own help.
  if (first === "help" && second === "write") return ["write", ...others, "--help"];
  const names = program.commands.map((command) => command.name());
  if (first === undefined || first.startsWith("-") || names.includes(first) || first === "help") return given;
  if (!existsSync(first)) {
    const near = nearest(first, names);
    if (near.length > 0) throw new Stop(`Unknown command \`${first}\`, expected ${near.join(" or ")}`);
  }
  return ["open", ...given];
}

// Whoever reads the output may stop reading it (`… | head`): that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit();
  throw error;
});

try {
  await program.parseAsync(argumentsOf(process.argv.slice(2)), { from: "user" });
} catch (error) {
  process.exitCode = toldAs(error);
}

function toldAs(error: unknown): number {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return 0;
    process.stderr.write(
      `${error.message
        .replace(/^error: /, "")
        .split("\n")
        .join(" ")}\n`,
    );
    return 2;
  }
  const message = error instanceof Error ? error.message : String(error);
  if (error instanceof Stop) {
    process.stderr.write(unsteered(`${message}\n`));
    return error.code;
  }
  process.stderr.write(`A fault of the program, not of the corpus: ${message.split("\n")[0] ?? ""}\n`);
  return 3;
}
