import { describe, expect, test } from "vitest";
import { importsOf } from "./imports.ts";
import { againstDirection, crowded, drawers, impure, importCircles, tooLong, undeclared } from "./laws.ts";
import type { Files } from "./laws.ts";
import { mask } from "./mask.ts";

const tree = (files: Readonly<Record<string, string>>): Files => new Map(Object.entries(files));

describe("the lexer", () => {
  test.each([
    [`import { a } from './a.ts';`, "./a.ts"],
    [`import type { A } from './a.ts';`, "./a.ts"],
    [`import { type A,\n  b as c, // from './no.ts'\n} from "./a.ts";`, "./a.ts"],
    [`import a, * as b from './a.ts';`, "./a.ts"],
    [`import './a.ts';`, "./a.ts"],
    [`export * from './a.ts';`, "./a.ts"],
    [`export * as a from './a.ts';`, "./a.ts"],
    [`export type { A } from './a.ts';`, "./a.ts"],
    [`const a = await import('./a.ts');`, "./a.ts"],
    [`let a: import('./a.ts').A;`, "./a.ts"],
    [`import table from './a.json' with { type: 'json' };`, "./a.json"],
    ["const a = `${await import(`./a.ts`)}`;", "./a.ts"],
    [`new Worker(new URL('./a.ts', import.meta.url))`, "./a.ts"],
  ])("finds the import in %s", (source, specifier) => {
    expect(importsOf(source).map((found) => found.specifier)).toEqual([specifier]);
  });

  test.each([
    `// import './a.ts';`,
    `/* import './a.ts'; */`,
    `const text = "import './a.ts'";`,
    'const text = `import "./a.ts"`;',
    `const pattern = /import '.\\/a.ts'/;`,
    `export const from = 'a';`,
    `array.from('a'); this.import('a');`,
    `import.meta.url`,
  ])("finds none in %s", (source) => {
    expect(importsOf(source)).toEqual([]);
  });

  test("keeps every character in its place", () => {
    const source =
      "const a = 'é'; /* x */ const b = `t ${{ c: '}' }.c} u`; // end\nconst d = 4 / 2 / 1, e = /[/'\"]/g;";
    expect(mask(source)).toBe(
      "const a = ' ';         const b = `  ${{ c: ' ' }.c}  `;       \nconst d = 4 / 2 / 1, e =         ;",
    );
  });
});

describe("direction", () => {
  test.each([
    ["src/base/a.ts", `import type { B } from '../read/b.ts';`],
    ["src/base/a.ts", `import type { B } from '../plugin.ts';`],
    ["src/plugin.ts", `export type { B } from './read/b.ts';`],
    ["src/read/a.ts", `import { b } from '../build.ts';`],
    ["src/judge/a.ts", `export { b } from '../show/b.ts';`],
    ["src/build.ts", `import { b } from './write/b.ts';`],
    ["src/write/a.ts", `import { b } from '../host/b.ts';`],
    ["src/host/a.ts", `import { b } from '../cli/b.ts';`],
    ["src/server/a.ts", `import { b } from '../cli/b.ts';`],
    ["src/app/a.ts", `import { b } from '../server/b.ts';`],
    ["src/cli/a.ts", `import { b } from '../app/b.ts';`],
    ["src/base/a.ts", `import { b } from '../../tests/b.ts';`],
    ["src/derive/a.ts", `import { plugins } from '../../plugins/index.ts';`],
    ["src/derive/a.ts", `import { spacing } from '../../plugins/spacing/index.ts';`],
    ["src/host/disk.ts", `import { plugins } from '../../plugins/index.ts';`],
    ["plugins/spacing/a.ts", `import { b } from '../scaling/b.ts';`],
    ["plugins/spacing/a.ts", `import { b } from '../../src/base/b.ts';`],
    ["plugins/spacing/a.ts", `import { b } from '../index.ts';`],
    ["plugins/spacing/a.ts", `import * as z from 'zod';`],
    ["src/base/a.ts", `import { readFileSync } from 'node:fs';`],
    ["src/base/a.ts", `import { b } from 'yamlish';`],
    ["src/show/a.tsx", `import { b } from 'react';`],
    ["src/app/a.ts", `import { b } from 'node:fs';`],
  ])("%s may not say %s", (path, source) => {
    expect(againstDirection(tree({ [path]: `\n${source}` }))).toEqual([
      expect.stringMatching(`^${path}:2 Unexpected`),
    ]);
  });

  test.each([
    [
      "src/read/a.ts",
      `import { b } from '../base/b.ts'; import { c } from './c.ts'; import * as z from 'zod';`,
    ],
    ["src/judge/rules/a.ts", `import { b } from '../b.ts'; import { c } from '../../plugin.ts';`],
    ["src/cli/a.ts", `import { b } from '../server/b.ts'; import { readFileSync } from 'node:fs';`],
    ["src/server/a.ts", `import { plugins } from '../../plugins/index.ts';`],
    ["src/host/threads/node-worker.ts", `import { plugins } from '../../../plugins/index.ts';`],
    ["src/host/node.ts", `new Worker(new URL('./compute-worker.js', import.meta.url));`],
    ["src/app/a.tsx", `import { b } from 'react-dom/client'; import '@fontsource/noto-serif/400.css';`],
    [
      "plugins/index.ts",
      `import { a } from './spacing/spacing.ts'; import type { B } from '../src/plugin.ts';`,
    ],
    ["plugins/spacing/a.ts", `import { b } from './b.ts'; import type { C } from '../../src/plugin.ts';`],
    ["plugins/spacing/a.ts", `import gammainc from '@stdlib/math-base-special-gammainc';`],
  ])("%s may say %s", (path, source) => {
    expect(againstDirection(tree({ [path]: source }))).toEqual([]);
  });
});

test("a package that is not in the manifest is found", () => {
  const source = `import a from "yaml"; import b from "@stdlib/b/c"; import "node:fs"; import "./d.ts";`;
  expect(undeclared(tree({ "src/cli/a.ts": source }), ["yaml"])).toEqual([
    "src/cli/a.ts:1 Unknown package `@stdlib/b`, expected one in package.json",
  ]);
});

describe("circles", () => {
  test("one of types alone is found, through three files", () => {
    const found = importCircles(
      tree({
        "src/base/a.ts": `import type { B } from './b.ts';`,
        "src/base/b.ts": `export * from './c.ts';`,
        "src/base/c.ts": `import('./a.ts');`,
        "src/base/d.ts": `import './a.ts';`,
      }),
    );
    expect(found).toEqual(["Unexpected circle of imports: src/base/a.ts, src/base/b.ts, src/base/c.ts"]);
  });

  test("two ways to one file are no circle", () => {
    const found = importCircles(
      tree({
        "src/base/a.ts": `import './b.ts'; import './c.ts';`,
        "src/base/b.ts": `import './c.ts';`,
        "src/base/c.ts": "",
      }),
    );
    expect(found).toEqual([]);
  });
});

describe("purity", () => {
  test.each([
    `const now = new Date();`,
    `const now = Date.now();`,
    `let when: Date;`,
    `const a = Math.random();`,
    `const a = Math['random']();`,
    `const a = b.localeCompare(c);`,
    `const a = n.toLocaleString();`,
    `const a = new Intl.NumberFormat();`,
    `const a = process.env;`,
    "const a = `${process.cwd()}`;",
    `globalThis.a = 1;`,
    `const a = { ...window };`,
    `document.title = 'a';`,
    `performance.now();`,
    `setTimeout(f, 1);`,
    `fetch('a');`,
    `const { a } = require('b');`,
    `const a = await import(name);`,
    `/// <reference types="node" />`,
  ])("%s is found", (source) => {
    expect(impure(tree({ "src/base/a.ts": source }))).toEqual([
      expect.stringMatching(/^src\/base\/a\.ts:1 Unexpected/),
    ]);
    expect(impure(tree({ "plugins/spacing/a.ts": source }))).not.toEqual([]);
    expect(impure(tree({ "src/host/a.ts": source }))).toEqual([]);
  });

  test.each([
    `// new Date() is not used here`,
    `const a = 'a Date or process';`,
    `const document = parse(text); use(document.range);`,
    `function f(process: string): string { return process; }`,
    `const f = (document) => document.body;`,
    `const { window } = model; use(window);`,
    `const a = record.Date; const b = { Date: 1 };`,
    `interface A { readonly process: string; document?: string }`,
    `const dates = updateDate(lastDate);`,
  ])("%s is not", (source) => {
    expect(impure(tree({ "src/base/a.ts": source }))).toEqual([]);
  });
});

describe("size and names", () => {
  test("301 lines are too long, a table is not", () => {
    const long = "a;\n".repeat(301);
    expect(
      tooLong(tree({ "src/base/a.ts": long, "src/base/unit-table.ts": long, "src/base/a.json": long })),
    ).toEqual(["src/base/a.ts Unexpected length of 301 lines, expected at most 300"]);
    expect(tooLong(tree({ "src/base/a.ts": "a;\n".repeat(300) }))).toEqual([]);
  });

  test("drawers are found by their name, other names are not", () => {
    const names = ["src/base/utils.ts", "src/helpers/a.ts", "src/base/text-helper.ts", "src/base/common.ts"];
    const fine = ["src/base/commons-register.ts", "src/base/utility.ts"];
    expect(drawers(tree(Object.fromEntries([...names, ...fine].map((name) => [name, ""]))))).toHaveLength(4);
  });

  test("the thirteenth file or sub-room is one too many", () => {
    const twelve = Array.from({ length: 12 }, (_, index): [string, string] => [
      `src/judge/rule-${index}.ts`,
      "",
    ]);
    expect(crowded(new Map(twelve))).toEqual([]);
    expect(crowded(new Map([...twelve, ["src/judge/more/a.ts", ""]]))).toEqual([
      "src/judge Unexpected 13 files and sub-rooms, expected at most 12",
    ]);
  });
});
