import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { unzipped } from "../reading/unzipped.ts";
import { run } from "./judged.ts";

/** Unpacks what is markup of a packed file into files beside it, and tells their paths. */
export function markupIn(folder: string, path: string): readonly string[] {
  const parts = [...unzipped(readFileSync(join(folder, path)))];
  return parts.flatMap(([name, content]) => {
    if (!/\.(?:xml|rels|svg)$/.test(name)) return [];
    const file = join(folder, "unpacked", path, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
    return [file];
  });
}

/** Elements of today's HTML (html.spec.whatwg.org, section 4) and of SVG 2, which HTML as libxml2 knows it, that of 1999, has not. */
const younger = new Set(
  (
    "article aside audio bdi canvas circle clippath data datalist defs desc details dialog ellipse figcaption figure footer g header " +
    "hgroup line main mark marker mask meter nav output path pattern picture polygon polyline progress rect ruby search section source " +
    "summary svg symbol text textpath time track tspan use video wbr"
  ).split(" "),
);

/** What xmllint says against a page, but for elements that are younger than what it knows. */
export function complaintsOf(path: string): readonly string[] {
  const { stderr } = run("xmllint", ["--html", "--noout", "--nonet", path]);
  return stderr.split("\n").filter((line) => {
    if (!/: HTML parser (?:error|warning) : |^error : /.test(line)) return false;
    const [, name] = / : Tag (\w+) invalid$/.exec(line) ?? [];
    return name === undefined || !younger.has(name);
  });
}
