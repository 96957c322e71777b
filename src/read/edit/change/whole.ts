import { lineEnd, lineEndAt } from "../hand/lines.ts";
import { itemLines, typed } from "../hand/typed.ts";
import type { Typed } from "../hand/typed.ts";
import { isBlock, isFlow } from "../site/site.ts";
import type { Site } from "../site/site.ts";
import type { Written } from "../written.ts";
import { placeIn } from "./desk.ts";
import type { Desk, Slot } from "./desk.ts";

/** Writes a value in the place of another, or behind a key or dash that had none. */
export function writeWhole(desk: Desk, site: Site, value: Written, slot: Slot): void {
  const { text, put } = desk;
  const { head, body } = typedIn(desk, site, value, slot);
  const behind = site.anchor === null ? slot.at : site.from + 1 + site.anchor.length;
  const mark = lineEndAt(text, behind);
  const below = body.map((line) => mark + line).join("");
  if (site.style === "empty") {
    const colon = slot.item || text[slot.at - 1] === ":" ? "" : ":";
    put(behind, behind, `${colon}${head === "" ? "" : ` ${head}`}`);
    if (below !== "") put(lineEnd(text, behind), lineEnd(text, behind), below);
    return;
  }
  const sameLine = !text.slice(behind, site.start).includes("\n");
  // Without a head the space behind the colon goes too.
  const from = head === "" && sameLine ? behind : site.start;
  if (site.style === "literal" || site.style === "folded") {
    put(from, site.headEnd, head);
    return put(lineEnd(text, site.headEnd), site.end, below);
  }
  if (isBlock(site) && !sameLine) {
    if (head !== "") put(behind, behind, ` ${head}`);
    return put(lineEnd(text, behind), lineEnd(text, site.end), below);
  }
  if (isBlock(site)) return put(from, site.end, head + below);
  if (below === "" || sameLine) {
    put(from, site.end, head);
    if (below !== "") put(lineEnd(text, site.end), lineEnd(text, site.end), below);
    return;
  }
  if (head !== "") put(behind, behind, ` ${head}`);
  put(lineEnd(text, behind), lineEnd(text, site.end), below);
}

function typedIn(desk: Desk, site: Site, value: Written, slot: Slot): Typed {
  const { text } = desk;
  // What YAML took apart is read as if it stood in quotes, and does not.
  const bare = (site.style === "double" && text[site.start] !== '"') || site.style === "empty";
  const flow = slot.flow || (isFlow(site) && typeof value !== "string");
  const place = { ...placeIn(desk, slot), flow, was: bare ? null : site.style };
  const { head, body } = typed(value, place);
  if (head !== "" || !slot.item) return { head, body };
  const [first = "", ...rest] = itemLines(value, slot.column, place);
  return { head: first.slice(slot.column + 1).trimStart(), body: rest };
}
