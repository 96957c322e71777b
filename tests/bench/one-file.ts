import type { SourceFile } from "../../src/read/source-file.ts";

/** Kinds whose records the head of their file says the source of. */
const fromHead = ["passages", "observations", "measurements", "positions", "readings"];

/** The same corpus with all its records in one file; what a file says of its source at its head each record then says itself. */
export function inOneFile(files: readonly SourceFile[]): readonly SourceFile[] {
  const isRecords = ({ path }: SourceFile): boolean => path.endsWith(".yaml") && path !== "corpus.yaml";
  const lists = new Map<string, string[]>();
  for (const { text } of files.filter(isRecords)) {
    const source = /^source: (.*)$/m.exec(text)?.[1];
    for (const part of text.split(/\n(?=[a-z]+:\n)/)) {
      const head = /^\s*([a-z]+):\n/.exec(part);
      if (head?.[1] === undefined) continue;
      const [list, records] = [
        head[1],
        part
          .slice(head[0].length)
          .trimEnd()
          .split(/\n(?= {2}- )/),
      ];
      const own = records.map((record) =>
        source === undefined || !fromHead.includes(list) || /^(?: {2}- | {4})from:/m.test(record)
          ? record
          : `${record}\n    from: ${source}`,
      );
      lists.set(list, [...(lists.get(list) ?? []), ...own]);
    }
  }
  const text = [...lists].map(([list, records]) => `${list}:\n${records.join("\n")}\n`).join("\n");
  return [...files.filter((file) => !isRecords(file)), { path: "records.yaml", text }];
}
