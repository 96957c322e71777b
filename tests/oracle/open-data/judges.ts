import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Programs of others that read what we write, where they are installed (Debian: raptor2-utils, python3-rdflib, libxml2-utils). */
export type Judge = "rapper" | "rdflib" | "xmllint";

const counted =
  "import rdflib, sys; g = rdflib.Graph(); g.parse(sys.argv[1], format='turtle'); print(len(g))";

const commands: Readonly<Record<Judge, (file: string) => readonly string[]>> = {
  rapper: (file) => ["rapper", "-c", "-i", "turtle", file],
  rdflib: (file) => ["/usr/bin/python3", "-c", counted, file],
  xmllint: (file) => ["xmllint", "--noout", "--nonet", file],
};

/** How many triples a judge counts in a text; of XML, 0 where it is well formed. Throws what the judge says against it. */
export function judgedBy(judge: Judge, text: string): number {
  const folder = mkdtempSync(join(tmpdir(), "open-data-"));
  try {
    const file = join(folder, "data");
    writeFileSync(file, text);
    const [program = "", ...rest] = commands[judge](file);
    const { status, stdout, stderr } = spawnSync(program, rest, { encoding: "utf8" });
    if (status !== 0) throw new Error(`${judge}: ${stderr.slice(0, 2000)}`);
    const said = `${stdout} ${stderr}`;
    return judge === "xmllint" ? 0 : Number(/(\d+)(?: triples)?\s*$/.exec(said.trim())?.[1] ?? NaN);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
