import { readFileSync, rmSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { Parser } from "n3";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { kinds } from "../../../src/host/telling/kinds.ts";
import { shippedStyles } from "../../../src/read/bibliography/style/shipped.ts";
import type { Cell } from "../../../src/show/telling/tables/table.ts";
import { dataTables } from "../../../src/show/telling/tables/tables.ts";
import { judgedBy } from "../../oracle/open-data/judges.ts";
import { unzipped } from "../reading/unzipped.ts";
import { bare, lacking, manuscriptsOf, partsOf } from "./expected.ts";
import type { Parts } from "./expected.ts";
import { judged, printedBy, run } from "./judged.ts";
import { allMade } from "./made.ts";
import type { AllMade } from "./made.ts";
import { complaintsOf, markupIn } from "./markup.ts";
import { pagesOf, sheetsOf } from "./office.ts";
import { readByPandoc } from "./pandoc.ts";
import { comparable, referencesByPandoc, referencesOfOurs } from "./references.ts";

let made: AllMade;
let expected: ReadonlyMap<string, Parts>;

beforeAll(async () => {
  made = await allMade();
  expected = new Map(
    Object.entries(manuscriptsOf(made.told)).map(([name, text]) => [
      name,
      partsOf(text, name.endsWith("-noted")),
    ]),
  );
});
afterAll(() => rmSync(made.folder, { recursive: true, force: true }));

const at = (path: string): string => join(made.folder, path);
const read = (path: string): string => readFileSync(at(path), "utf8");
const ending = (...endings: readonly string[]): readonly string[] =>
  made.paths.filter((path) => endings.includes(extname(path)));
const nameOf = (path: string): string => basename(path, extname(path));
const partsIn = (name: string): Parts => {
  const parts = expected.get(name);
  if (!parts) throw new Error(`no text ${name}`);
  return parts;
};

test("every kind is made in every format, and every file is of a kind that is judged or read elsewhere", async () => {
  for (const [kind, load] of Object.entries(kinds))
    for (const format of (await load()).formats)
      if (format !== "zip")
        expect(
          ending(`.${format}`).some((path) => path.startsWith(`${kind}/`)),
          `${kind} ${format}`,
        ).toBe(true);
  const readElsewhere = [".csv", ".png", ".yaml", ".json"];
  const judgedHere = [
    ".docx",
    ".pptx",
    ".xlsx",
    ".md",
    ".html",
    ".svg",
    ".pdf",
    ".ttl",
    ".jsonld",
    ".graphml",
  ];
  expect(made.paths.filter((path) => ![...readElsewhere, ...judgedHere].includes(extname(path)))).toEqual([]);
});

describe("LibreOffice", () => {
  let opened: ReadonlyMap<string, readonly string[]> | null = null;
  const pages = (): ReadonlyMap<string, readonly string[]> =>
    (opened ??= pagesOf(made.folder, ending(".docx", ".pptx")));

  judged(["soffice", "pdftotext"], "opens every text and every talk, and no page is empty", () => {
    expect(pages().size).toBeGreaterThanOrEqual(6);
    for (const [path, texts] of pages()) {
      expect(texts.length, path).toBeGreaterThan(0);
      for (const [n, text] of texts.entries())
        expect(bare(text).length, `${path} page ${n + 1}`).toBeGreaterThan(8);
    }
  });

  judged(
    ["soffice", "pdftotext"],
    "finds in texts their headings, the heads of tables, numbers, all scripts",
    () => {
      for (const [path, texts] of pages()) {
        if (!path.endsWith(".docx")) continue;
        const { headings, numbers, tables } = partsIn(nameOf(path));
        const all = bare(texts.join(""));
        expect(
          lacking(
            headings.map(({ words }) => words),
            all,
          ),
          path,
        ).toEqual([]);
        // The lines of two cells side by side are read one after the other.
        const heads = tables.flatMap(([head]) => (head ?? []).flat().flatMap((cell) => cell.split(/\s+/)));
        expect(
          lacking(
            heads.map((word) => [word]),
            all,
          ),
          path,
        ).toEqual([]);
        // A whole sentence may go on after the notes of a page.
        const short = numbers.filter((one) => one.length <= 40);
        expect(
          lacking(
            short.map((one) => [one]),
            all,
          ),
          path,
        ).toEqual([]);
        if (path === "review/review.docx") expect(short.length).toBeGreaterThan(20);
      }
      const review = pages().get("review/review.docx")?.join("") ?? "";
      expect(
        lacking([["Μαυρογιάννη"], ["سلمى"], ["Anéis de madeira"], ["A Pace of the Down"]], review),
      ).toEqual([]);
    },
  );

  judged(
    ["soffice", "pdftotext"],
    "shows as many slides as there are, with what each step says and no notes",
    () => {
      const steps = made.told.model.graph.list("talks").flatMap(({ values }) => values.steps);
      expect(steps.length).toBeGreaterThanOrEqual(8);
      expect(ending(".pptx")).toHaveLength(2);
      for (const path of ending(".pptx")) {
        const texts = pages().get(path) ?? [];
        const parts = [...unzipped(readFileSync(at(path))).keys()];
        expect(texts.length, path).toBe(
          parts.filter((one) => /^ppt\/slides\/slide\d+\.xml$/.test(one)).length,
        );
        expect(texts.length, path).toBeGreaterThanOrEqual(steps.length);
        const all = bare(texts.join(""));
        const said = steps.flatMap(({ text }) => (text === undefined ? [] : [[text]]));
        expect(lacking([...said, ["Μαυρογιάννη"], ["سلمى"]], all), path).toEqual([]);
        const notes = steps.flatMap((one) => (one.notes === undefined ? [] : [[one.notes]]));
        expect(lacking(notes, all), path).toHaveLength(notes.length);
      }
    },
  );

  judged(["soffice", "rdflib"], "reads from the workbook each cell as it is", () => {
    const { model, findings, files } = made.told;
    const tables = dataTables(model, findings, new Map(files.map(({ path, text }) => [path, text])));
    const sheets = sheetsOf(
      made.folder,
      "tables/tables.xlsx",
      tables.map(({ name }) => name),
    );
    for (const { name, columns, rows } of tables) {
      const [head = [], ...lines] = sheets.get(name) ?? [];
      expect(head).toEqual(columns.map((one) => one.name));
      expect(lines.length, name).toBe(rows.length);
      const read = lines.map((line, n) => line.map((field, c) => asCell(field, rows[n]?.[c] ?? null)));
      expect(read, name).toEqual(
        rows.map((cells) =>
          cells.map((cell) =>
            typeof cell === "number" ? (expect.closeTo(cell, 12) as unknown) : (cell ?? ""),
          ),
        ),
      );
    }
  });

  /** A field as what its cell holds. */
  const asCell = (field: string, cell: Cell): Cell =>
    typeof cell === "number" ? Number(field) : typeof cell === "boolean" ? field === "TRUE" : field;
});

describe("pandoc", () => {
  const texts = ["review/review", "application/application", "application/application-noted", "visit/visit"];
  const files = texts.flatMap((one) => ["docx", "md"].map((format) => `${one}.${format}`));

  judged(["pandoc"], "finds in documents and in Markdown what the text has", () => {
    for (const path of files) {
      const parts = partsIn(nameOf(path));
      const found = readByPandoc(at(path));
      // In Markdown the title is a heading above all others.
      const above = path.endsWith(".md") ? 1 : 0;
      const headings = found.headings
        .slice(above)
        .map(({ level, words }) => ({ level: level - above, words }));
      expect(
        headings.map(({ level }) => level),
        path,
      ).toEqual(parts.headings.map(({ level }) => level));
      expect(
        found.tables.map((rows) => rows.map((row) => row.length)),
        path,
      ).toEqual(parts.tables.map((rows) => rows.map((row) => row.length)));
      expect(found.alts.map(bare), path).toEqual(parts.alts.map(bare));
      expect(found.notes.length, path).toBe(parts.notes.length);
      const pairs = [
        ...parts.headings.map(({ words }, n) => [words, headings[n]?.words] as const),
        ...parts.tables.flat(2).map((cell, n) => [cell, found.tables.flat(2)[n]] as const),
        ...parts.notes.map((note, n) => [note, found.notes[n]] as const),
      ];
      expect(
        pairs.flatMap(([words, text]) => lacking([words], text ?? "")),
        path,
      ).toEqual([]);
      expect(
        lacking(
          parts.numbers.map((one) => [one]),
          found.words,
        ),
        path,
      ).toEqual([]);
    }
    const many = (name: string): number => partsIn(name).notes.length;
    expect(many("review")).toBeGreaterThan(5);
    expect(many("application-noted")).toBeGreaterThan(many("application"));
  });

  judged(
    ["pandoc"],
    "writes in every style that comes with the program the references that we write",
    async () => {
      for (const style of shippedStyles)
        expect((await referencesOfOurs(made.told, style)).map(comparable), style).toEqual(
          referencesByPandoc(at("data/sources.json"), style).map(comparable),
        );
    },
  );
});

describe("poppler and qpdf", () => {
  judged(["qpdf"], "qpdf finds nothing amiss in a figure", () => {
    expect(ending(".pdf").length).toBeGreaterThan(4);
    for (const path of ending(".pdf")) {
      const { status, stdout, stderr } = run("qpdf", ["--check", at(path)]);
      expect(status, `${path}: ${stdout}${stderr}`).toBe(0);
      expect(stdout, path).toContain("No syntax or stream encoding errors found");
    }
  });

  judged(
    ["pdffonts"],
    "every font of a figure is embedded, a part of it alone, with what its letters are",
    () => {
      for (const path of ending(".pdf")) {
        const fonts = printedBy("pdffonts", [at(path)])
          .split("\n")
          .slice(2, -1);
        expect(fonts.length, path).toBeGreaterThan(0);
        for (const font of fonts) expect(font, path).toMatch(/^[A-Z]{6}\+.* yes yes yes +\d+ +\d+$/);
      }
    },
  );
});

describe("xmllint", () => {
  judged(
    ["xmllint"],
    "every drawing, and every part of a document, a talk and a workbook is well formed",
    () => {
      const parts = ending(".docx", ".pptx", ".xlsx").flatMap((path) => markupIn(made.folder, path));
      expect(parts.length).toBeGreaterThan(100);
      const drawings = ending(".svg", ".graphml").map(at);
      printedBy("xmllint", ["--noout", "--nonet", ...drawings, ...parts]);
    },
  );

  judged(["xmllint"], "a page has nothing amiss", () => {
    expect(ending(".html").length).toBeGreaterThanOrEqual(4);
    expect(ending(".html").flatMap((path) => complaintsOf(at(path)))).toEqual([]);
  });
});

describe("rapper and rdflib", () => {
  const triples = (path: string): number => new Parser().parse(read(path)).length;

  judged(["rapper"], "rapper counts as many triples in Turtle as N3", () => {
    for (const path of ending(".ttl")) expect(judgedBy("rapper", read(path)), path).toBe(triples(path));
  });

  judged(["rdflib"], "rdflib reads the same graph from Turtle and from JSON-LD", () => {
    const script = [
      "import rdflib, sys",
      "one, other = (rdflib.Graph().parse(path, format=form) for path, form in zip(sys.argv[1:], ['turtle', 'json-ld']))",
      "print(len(one), len(other), len([t for t in one if not any(isinstance(n, rdflib.BNode) for n in t) and t not in other]))",
    ].join("\n");
    const printed = printedBy("/usr/bin/python3", [
      "-c",
      script,
      at("data/data.ttl"),
      at("data/data.jsonld"),
    ]);
    const many = triples("data/data.ttl");
    expect(printed.trim()).toBe(`${many} ${many} 0`);
    expect(many).toBeGreaterThan(1000);
  });
});
