import { expect, test } from "vitest";
import { arabicFieldNames } from "../../../src/app/words/arabic/shown/fields.ts";
import { arabicRules } from "../../../src/app/words/arabic/shown/findings.ts";
import { ruleName } from "../../../src/app/words/shown/findings.ts";
import { ruleDocs } from "../../../src/judge/rules/index.ts";
import type { Fields } from "../../../src/read/grammar/field.ts";
import { everywhere, kindOf, listNames } from "../../../src/read/grammar/kinds.ts";

const ids = ruleDocs.map(({ id }) => id);

test("every rule has a name in Arabic, each its own, and nothing else has", () => {
  expect(Object.keys(arabicRules).toSorted()).toEqual(ids.toSorted());
  expect(new Set(Object.values(arabicRules)).size).toBe(ids.length);
  for (const name of Object.values(arabicRules)) expect(name).toMatch(/^[\u0600-\u06ff]/);
});

test("in English a rule is called by its name without the hyphens", () => {
  expect(ruleName("verdict-depends-on-one")).toBe("verdict depends on one");
});

test("every field of a record, however deep it stands, has a name in Arabic, and nothing else has", () => {
  const names = (fields: Fields): readonly string[] =>
    Object.entries(fields).flatMap(([name, field]) => [
      name.replace(/-/g, " "),
      ...(field.type === "group" || field.type === "items" || field.type === "named"
        ? names(field.fields)
        : []),
    ]);
  const all = new Set([...listNames.map((list) => kindOf(list).fields), everywhere].flatMap(names));
  expect(Object.keys(arabicFieldNames).toSorted()).toEqual([...all].toSorted());
  for (const name of Object.values(arabicFieldNames)) expect(name).toMatch(/^[\u0600-\u06ff ]+$/);
});
