import { inEnglish } from "../../base/text/said/english.ts";
import type { TableTold, TwinTold } from "../../show/desk/import/table/told/told.ts";
import { many } from "../print/fix.ts";
import { paint } from "../print/paint.ts";

/** By what a row is taken for an artefact of the corpus, in words. */
const reasons = { id: "the same id", number: "the same number", name: "the same name" } as const;

/** What an import of a table did: what each column was taken for, what was added, merged and left alone, and what could not come in. */
export function tableText(told: TableTold): readonly string[] {
  const { columns, fresh, there, twins, hidden, failures, files } = told;
  const merged = twins.filter((one) => one.does === "merge" && one.missing.length > 0);
  const left = twins.filter((one) => one.does !== "add" && !merged.includes(one));
  return [
    `Columns, as ${told.list}:`,
    ...columns.map(
      ({ head, text, why, unsure }) =>
        `    ${head === "" ? "(no head)" : head}: ${paint.bold(text)} (${inEnglish(why)}${unsure ? "; unsure" : ""})`,
    ),
    ...fresh.map(({ line, id, dimension, value }) =>
      [`line ${line}  added: ${id}`, dimension, value].filter((one) => one !== null).join(", "),
    ),
    ...merged.flatMap((one) => twinText(one, "merged into")),
    ...left.flatMap((one) => twinText(one, "left alone, like")),
    ...there.map(({ line, id }) => `line ${line}  left alone: ${id} says the same`),
    ...hidden.map((line) => `line ${line}  left alone: it is like something that the corpus withholds`),
    ...failures.flatMap(({ line, head, why, text }) => [
      `${paint.bold(`line ${line}`)}  ${paint.red("not brought in")}${head === null ? "" : ` (${head})`}`,
      ...why.map((one) => `    ${inEnglish(one)}`),
      ...(text === "" ? [] : [`      ┆ ${text}`]),
    ]),
    ...files.map(({ file, isNew, records }) => `${file}${isNew ? " (new)" : ""}: ${many(records, "record")}`),
    [
      `${fresh.length} added`,
      `${merged.length} merged`,
      `${left.length + there.length + hidden.length} left alone`,
      `${failures.length} not brought in`,
      ...(told.without > 0 ? [`${many(told.without, "cell")} without a figure`] : []),
    ].join(", ") + ".",
  ];
}

function twinText({ line, id, why, missing, differing }: TwinTold, what: string): readonly string[] {
  const fields = missing.map(({ name }) => name).join(", ");
  const adds = what === "merged into" ? `: ${fields}` : "";
  return [
    `line ${line}  ${what} ${id}${adds} (${reasons[why]})`,
    ...(adds === "" && fields !== "" ? [`    it lacks there: ${fields}`] : []),
    ...differing.map(
      ({ name, here, theirs }) => `    ${name} differs: “${here ?? ""}” there, “${theirs}” here`,
    ),
  ];
}
