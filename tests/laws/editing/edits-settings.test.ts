import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isList, writtenOf } from "../../../src/read/edit/written.ts";
import type { Written, WrittenMap } from "../../../src/read/edit/written.ts";
import { settingsFields } from "../../../src/read/grammar/settings.ts";
import { readYaml } from "../../../src/read/yaml/text.ts";
import { anyValue, changed, handWritten, isKept, keepings, linesOf, meant } from "./edits-files.ts";

describe("a setting that changes", () => {
  const settings = handWritten
    .filter(([name]) => name.startsWith("corpus"))
    .flatMap(([, text]) => keepings.map(([, kept]) => kept(text)));
  const names = [...Object.keys(settingsFields), "x-own"];
  const paths = fc.oneof(
    fc.constantFrom(...names).map((name) => [name]),
    fc.constantFrom(
      ["units", "down-pace", "is"],
      ["units", "ring-foot", "is"],
      ["dimensions", "gap", "also"],
      ["dimensions", "gap"],
      ["dimensions", "post-hole depth", "sign"],
      ["rules", "near-name"],
    ),
  );

  test("leaves every other one as it stands, and reads as it was meant", () => {
    fc.assert(
      fc.property(fc.constantFrom(...settings), paths, fc.option(anyValue), (text, path, value) => {
        const after = changed("corpus.yaml", text, { is: "setting", path, value });
        if (after === null) throw new Error("cannot change");
        const { root } = readYaml("", text);
        const said = new Map(Object.entries(root ? writtenOf(root) : {}));
        const [name = "", ...rest] = path;
        const whole = rest.length === 0 ? value : put(said.get(name), rest, value);
        if (whole === null) said.delete(name);
        else said.set(name, whole);
        expect(meant(writtenIn(after))).toEqual(meant(Object.fromEntries(said)));
        const entry = root?.entries.find(({ key }) => key === name);
        if (!entry) return void expect(isKept(linesOf(text), linesOf(after))).toBe(true);
        expect(after.startsWith(text.slice(0, entry.keyStart).trimEnd())).toBe(true);
        expect(
          after.endsWith(text.slice(Math.max(entry.value.end, entry.keyEnd)).replace(/^[^\n]*\s+/, "")),
        ).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

/** A map with a value put in at a path, or without it; maps on the way are made. */
function put(whole: Written | undefined, path: readonly string[], value: Written | null): WrittenMap {
  const [name = "", ...rest] = path;
  const map = new Map(
    whole === undefined || typeof whole === "string" || isList(whole) ? [] : Object.entries(whole),
  );
  const one = rest.length === 0 ? value : put(map.get(name), rest, value);
  if (one === null) map.delete(name);
  else map.set(name, one);
  return Object.fromEntries(map);
}

function writtenIn(text: string): Written {
  const { root } = readYaml("", text);
  if (!root) throw new Error(`unreadable: ${text}`);
  return writtenOf(root);
}
