import { finding } from "../../../../base/finding.ts";
import type { Finding } from "../../../../base/finding.ts";
import { nearest } from "../../../../base/nearest.ts";
import { coded, row, say } from "../../../../base/text/said/said.ts";
import { slipFor } from "../../../../base/text/slip.ts";
import type { Graph } from "../../../../link/graph.ts";
import { suchAs } from "../../../../read/decode/named.ts";
import { sectionNames } from "../../../../read/prose/sections.ts";
import { spanOf } from "../../../../read/record.ts";

/** Sections that the settings name and that are neither the program's nor the scholar's own, with the nearest names. */
export function straySections({ settings, prose }: Graph): readonly Finding[] {
  const known = [...new Set([...sectionNames, ...prose.map((one) => one.name)])];
  return (settings.review ?? []).flatMap((name, place) => {
    if (known.includes(name)) return [];
    const at = spanOf({ file: settings.file, node: settings.node }, "review", place);
    const near = nearest(name, known);
    const due = near.length > 0 ? suchAs(say`a section`, near) : say`one of ${row(known, "comma")}`;
    const meant = slipFor(name, known);
    const fix =
      meant !== null && at.end - at.start === name.length
        ? { label: say`Write ${meant}`, edits: [{ ...at, text: meant }] }
        : null;
    return [finding("bad-value", say`Unknown section ${coded(name)}, expected ${due}`, at, { fix })];
  });
}
