import { describe, expect, test } from "vitest";
import { mergedFile } from "../../../src/read/edit/merge/file.ts";

const claim = (id: string, text = "It was roofed."): string => `  - id: ${id}\n    text: ${text}\n`;
const file = (...claims: readonly string[]): string => `claims:\n${claims.join("")}`;

describe("a record that one or both sides called otherwise", () => {
  test("by both, it does not become two", () => {
    const [base, mine, theirs] = [file(claim("a")), file(claim("b")), file(claim("c"))];
    expect(mergedFile("a.yaml", base, mine, theirs)).toHaveProperty("conflicts");
    const source = (from: string): string =>
      `measurements:\n  - of: post\n    dimension: width\n    value: 5 m\n    from: ${from}\n`;
    const said = mergedFile("a.yaml", source("vane"), source("hale"), source("kern"));
    expect(said).toHaveProperty("conflicts");
  });

  test("by one, it keeps what the other changed", () => {
    const base = file("  - id: a\n    # as he has it\n    text: It was roofed.\n");
    const [mine, theirs] = [base.replace("id: a", "id: b"), base.replace("roofed", "open")];
    expect(mergedFile("a.yaml", base, mine, theirs)).toEqual({
      text: base.replace("id: a", "id: b").replace("roofed", "open"),
    });
  });

  test("one that both took out does not keep them from taking in their own", () => {
    const [x, y, z] = [claim("x", "One."), claim("y", "Two."), claim("z", "Three.")];
    const base = file(x, y, z, claim("a"), claim("q", "Four."));
    const [mine, theirs] = [
      file(claim("m", "Mine."), x, y, z, claim("q", "Four.")),
      file(x, y, z, claim("q", "Four.")),
    ];
    expect(mergedFile("a.yaml", base, mine, theirs)).toEqual({ text: mine });
  });
});
