import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { printedBy } from "./judged.ts";

/** Has LibreOffice write files of a folder in another format into a sub-folder, all by one process that has settings of its own. */
export function converted(folder: string, to: string, into: string, paths: readonly string[]): void {
  const own = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
  const files = paths.map((path) => join(folder, path));
  printedBy("soffice", [own, "--headless", "--convert-to", to, "--outdir", join(folder, into), ...files]);
}

/** Comma, quotation mark, UTF-8, from the first line; as it is and not as it is shown; every sheet in a file of its own. */
const asCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

/** The texts of the pages of each file, as LibreOffice lays them out; without the numbers of the pages, which stand in the midst of sentences. */
export function pagesOf(folder: string, paths: readonly string[]): ReadonlyMap<string, readonly string[]> {
  converted(folder, "pdf", "opened", paths);
  return new Map(
    paths.map((path) => {
      const name = path.replace(/^.*\/(.*)\.\w+$/, "opened/$1.pdf");
      const texts = printedBy("pdftotext", [join(folder, name), "-"])
        .split("\f")
        .slice(0, -1);
      return [path, texts.map((text) => text.replace(/^\s*\d+\s*$/gm, ""))];
    }),
  );
}

/** The cells of the sheets of a workbook by their names, as LibreOffice reads it and Python what that writes. */
export function sheetsOf(
  folder: string,
  path: string,
  names: readonly string[],
): ReadonlyMap<string, readonly (readonly string[])[]> {
  converted(folder, asCsv, "sheets", [path]);
  const script = [
    "import csv, json, sys",
    "print(json.dumps(list(csv.reader(open(sys.argv[1], newline='', encoding='utf-8')))))",
  ].join("\n");
  const book = path.replace(/^.*\/(.*)\.\w+$/, "$1");
  return new Map(
    names.map((name) => {
      const file = join(folder, "sheets", `${book}-${name}.csv`);
      return [name, JSON.parse(printedBy("/usr/bin/python3", ["-c", script, file])) as string[][]];
    }),
  );
}
