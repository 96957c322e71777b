import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";

const sheet = readFileSync(new URL("../../../src/app/look/sheet/sheet.css", import.meta.url), "utf8");
const [light = "", dark = ""] = [...sheet.matchAll(/:root \{([^}]*)\}/g)].map((match) => match[1] ?? "");

function coloursIn(block: string): ReadonlyMap<string, string> {
  return new Map(
    [...block.matchAll(/--(\w+): (#[0-9a-f]{6})/g)].map((match) => [match[1] ?? "", match[2] ?? ""]),
  );
}

/** Relative luminance and contrast of WCAG 2.2. */
function luminance(colour: string): number {
  const channel = (at: number): number => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

function contrast(a: string, b: string): number {
  const [bright, dim] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return ((bright ?? 0) + 0.05) / ((dim ?? 0) + 0.05);
}

test("the formula gives the known extremes", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
});

describe.each([
  ["light", coloursIn(light)],
  ["dark", coloursIn(dark)],
])("%s", (_, colours) => {
  const of = (name: string): string => colours.get(name) ?? "#000000";
  test.each(["ink", "soft", "blue", "red"])("%s is readable on sheet and paper", (name) => {
    expect(colours.has(name)).toBe(true);
    expect(contrast(of(name), of("sheet"))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of(name), of("paper"))).toBeGreaterThanOrEqual(4.5);
  });
  test("lines that carry meaning are seen on sheet and paper", () => {
    expect(colours.has("line")).toBe(true);
    expect(contrast(of("line"), of("sheet"))).toBeGreaterThanOrEqual(3);
    expect(contrast(of("line"), of("paper"))).toBeGreaterThanOrEqual(3);
  });
});

test("hairlines part things and mean nothing: no link, stroke or outline is one", () => {
  const look = new URL("../../../src/app/look/", import.meta.url);
  const names = readdirSync(look, { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".css"),
  );
  const all = names.map((name) => readFileSync(new URL(name, look), "utf8")).join("\n");
  const uses = [...all.matchAll(/([\w-]+): [^;{}]*var\(--hair\)/g)].map((match) => match[1]);
  expect(uses.length).toBeGreaterThan(5);
  for (const property of uses) expect(property).toMatch(/^border(-(block|inline)-(start|end)|-color)?$/);
});
