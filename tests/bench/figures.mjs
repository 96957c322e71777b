// The figures that were measured, a row for each with the command that makes it and the day when it did: all in
// docs/figures.md, and in the README those that have something to reach.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { arch, cpus, platform } from "node:os";
import { fileURLToPath } from "node:url";

/** What the columns of a row are: what is printed of one, and in the file the day and the command besides. */
export const heads = ["goal", "what", "ours", "beside", "ratio", "to reach", ""];

const inFile = ["goal", "what", "measured", "beside", "ratio", "to reach", "", "on", "command"];
const file = fileURLToPath(new URL("../../docs/figures.md", import.meta.url));
const readme = fileURLToPath(new URL("../../README.md", import.meta.url));

/** Between these marks the README has the rows of the file that have something to reach. */
export const marks = ["<!-- docs/figures.md -->", "<!-- end of docs/figures.md -->"];

const noGoal = "no goal";

/** A row in words: a ratio beside `goalRatio`, or a figure beside `goalFigure` where there is no peer. */
export function told({ goal, what, ours, peer, ratio, goalRatio, goalFigure, unit }) {
  const plain = (value) => (typeof value === "number" ? String(Number(value.toPrecision(3))) : "–");
  const figure = (value) => `${plain(value)}${typeof value === "number" && unit ? ` ${unit}` : ""}`;
  const [reached, most] =
    typeof ratio === "number" && typeof goalRatio === "number"
      ? [ratio <= goalRatio, plain(goalRatio)]
      : typeof goalFigure === "number"
        ? [ours <= goalFigure, figure(goalFigure)]
        : [null, null];
  const verdict = reached === null ? noGoal : reached ? "reached" : "missed";
  const least = most === null ? "–" : `≤ ${most}`;
  return [String(goal), what, figure(ours), figure(peer), plain(ratio), least, verdict];
}

/** Puts the rows of one command in the place of those it made before, in the order of the goals, in the file and in the README. */
export function keepFigures(command, rows) {
  const day = new Date().toISOString().slice(0, 10);
  const fresh = rows.map((row) => [...row, day, `\`${command}\``]);
  const others = existsSync(file) ? rowsIn(readFileSync(file, "utf8")) : [];
  const kept = others.filter((row) => row.at(-1) !== `\`${command}\``);
  const all = [...kept, ...fresh].sort(byGoal);
  writeFileSync(file, `${opening()}\n${tableOf(all)}`);
  const text = readFileSync(readme, "utf8");
  const [from, to] = marks.map((mark) => text.indexOf(mark));
  if (from < 0 || to < from) throw new Error(`The README has no place between ${marks.join(" and ")}`);
  const quoted = tableOf(all.filter(hasGoal));
  writeFileSync(readme, `${text.slice(0, from + marks[0].length)}\n${quoted}${text.slice(to)}`);
}

/** Whether a row has something to reach. */
export function hasGoal(row) {
  return row[inFile.indexOf("")] !== noGoal;
}

/** In the order of the goals, what has none last; rows of one goal stay in their order. */
function byGoal([one], [other]) {
  const place = (goal) => (/^\d+$/.test(goal) ? Number(goal) : Infinity);
  return place(one) === place(other) ? 0 : place(one) - place(other);
}

function opening() {
  const processors = cpus();
  return `# Figures

Written by \`npm run bench\`, last with Node ${process.versions.node} on ${platform()} ${arch()}, ${processors.length} processors (${processors[0]?.model.trim() ?? "unknown"}).
A ratio is ours to the peer's in the same run, by medians of runs in turn; where there is no peer the figure itself has a goal.
`;
}

/** The rows of a table in Markdown, without its head. */
export function rowsIn(text) {
  return text
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .map((line) =>
      line
        .slice(2, -2)
        .split(" | ")
        .map((cell) => cell.trim()),
    )
    .filter((cells) => cells.length === inFile.length && cells.at(-1).startsWith("`"));
}

function tableOf(rows) {
  const line = (cells) => `| ${cells.join(" | ")} |\n`;
  return [line(inFile), line(inFile.map(() => "---")), ...rows.map(line)].join("");
}
