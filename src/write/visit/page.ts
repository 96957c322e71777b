import { escaped } from "../../base/text/steering.ts";
import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { VisitAsked } from "../../show/desk/visit/asked.ts";
import type { Block, Field, FieldRow } from "../../show/desk/visit/blocks/block.ts";
import { base64 } from "./base64.ts";
import { script } from "./script.ts";
import { style } from "./style.ts";

/** What a page of a sheet is for, beside its pieces. */
export interface SheetOf {
  readonly asked: VisitAsked;
  readonly corpus: string;
}

/**
 * A visit sheet as one page that needs nothing else: it prints with lines to write on, and is filled in on a laptop without
 * this program. Nothing but its own script runs in it; earlier values are not to be read in its text.
 */
export function visitPage(blocks: readonly Block[], of: SheetOf): string {
  const title = blocks.flatMap((one) => (one.is === "title" ? [inEnglish(one.text)] : []))[0] ?? "";
  const policy = [
    "default-src 'none'",
    `script-src '${hashed(script)}'`,
    `style-src '${hashed(style)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return [
    "<!doctype html>",
    `<html lang="en">`,
    `<meta charset="utf-8">`,
    `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">`,
    `<meta name="viewport" content="width=device-width, initial-scale=1">`,
    `<title>${escaped(title)}</title>`,
    `<style>${style}</style>`,
    ...leavesOf(blocks),
    `<div class="keep"><button id="save" type="button">Save as a file</button><output id="state">What is written stays in this browser.</output></div>`,
    `<script type="application/json" id="about">${JSON.stringify(aboutOf(of)).replace(/</g, "\\u003c")}</script>`,
    `<script>${script}</script>`,
    "</html>",
    "",
  ].join("\n");
}

/** The pieces in their order; what stands on a leaf of its own is folded away on a screen, and printed all the same. */
function leavesOf(blocks: readonly Block[]): readonly string[] {
  const parts = blocks.map((block, place) => {
    const html = inHtml(block, place);
    return block.is === "heading" && block.apart ? `</section><section class="leaf">${html}` : html;
  });
  return ["<section>", ...parts, "</section>"];
}

function aboutOf({ asked, corpus }: SheetOf): object {
  const name = (asked.examination ?? asked.keeper ?? "").toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-");
  return {
    asked,
    corpus,
    file: `visit-${name}.json`,
    unfold: "Show it now that all is measured and looked for",
    kept: "Kept in this browser.",
    notKept: "This browser keeps nothing: save it as a file.",
    saved: "Saved as a file: variorum import FILE --into CORPUS brings it in.",
  };
}

function hashed(text: string): string {
  return `sha256-${base64(sha256(utf8ToBytes(text)))}`;
}

function inHtml(block: Block, place: number): string {
  switch (block.is) {
    case "title":
      return `<h1 dir="auto">${words(block.text)}</h1>\n<p class="lead" dir="auto">${words(block.lead)}</p>`;
    case "heading":
      return `<h${block.level} dir="auto"${block.apart ? ' class="apart"' : ""}>${words(block.text)}</h${block.level}>`;
    case "text":
      return `<p dir="auto">${block.strong ? `<strong>${words(block.text)}</strong>` : words(block.text)}</p>`;
    case "terms":
      return `<dl>${block.rows.map(([name, value]) => `<dt dir="auto">${words(name)}</dt><dd dir="auto">${words(value)}</dd>`).join("")}</dl>`;
    case "list":
      return `<ul>${block.items.map((one) => `<li dir="auto">${words(one)}</li>`).join("")}</ul>`;
    case "row":
      return rowHtml(block.row, place);
    case "room":
      return `<div class="room">${"<div></div>".repeat(block.lines)}</div>`;
  }
}

function rowHtml({ name, says, fields, after }: FieldRow, place: number): string {
  return [
    `<section class="row"><h3 dir="auto">${words(name)}</h3>`,
    ...says.map((one) => `<p class="says" dir="auto">${words(one)}</p>`),
    `<div class="fields">${fields.map((one, at) => fieldHtml(one, `f${place}-${at}`)).join("")}</div>`,
    ...(after === null ? [] : [afterHtml(after, fields)]),
    "</section>",
  ].join("\n");
}

function fieldHtml(field: Field, id: string): string {
  const { at, label, is, choices, value } = field;
  const counts = is === "figure" || at.at(-1) === "present" ? " data-counts" : "";
  const common = `id="${id}" data-at="${escaped(JSON.stringify(at))}"${counts}`;
  const wide = is === "line" && ["text", "note", "between", "from"].includes(String(at.at(-1)));
  const start = `<label${wide ? ' class="wide"' : ""} for="${id}"><span dir="auto">${words(label)}</span>`;
  if (is === "choice") {
    const options = choices.map(
      (one) =>
        `<option value="${escaped(one.value)}"${one.value === value ? " selected" : ""}>${words(one.text)}</option>`,
    );
    return `${start}<select ${common}>${options.join("")}</select>${ticksHtml(choices)}</label>`;
  }
  const offered = choices.length === 0 ? "" : ` list="${id}-list"`;
  const list =
    choices.length === 0
      ? ""
      : `<datalist id="${id}-list">${choices.map((one) => `<option value="${escaped(one.value)}">${words(one.text)}</option>`).join("")}</datalist>`;
  const kind = is === "day" ? "date" : "text";
  const figure = is === "figure" ? ' inputmode="decimal"' : "";
  return `${start}<input type="${kind}" ${common} value="${escaped(value)}"${offered}${figure} dir="auto" autocomplete="off">${list}</label>`;
}

/** On paper nothing drops down: what can be chosen stands there to be ticked, where nothing has been chosen yet. */
function ticksHtml(choices: Field["choices"]): string {
  if (choices.every(({ value }) => value !== "")) return "";
  const offered = choices.filter(({ value }) => value !== "");
  return `<span class="ticks">${offered.map(({ text }) => `<span dir="auto">${words(text)}</span>`).join("")}</span>`;
}

/** Earlier values, not to be read in the text of the page. */
function afterHtml(after: NonNullable<FieldRow["after"]>, fields: readonly Field[]): string {
  const told = `Earlier: ${after.told.map(inEnglish).join("; ")}`;
  const seen = JSON.stringify([...(fields[0]?.at.slice(0, 2) ?? []), "seen"]);
  return `<p class="after" dir="auto" aria-live="polite" data-fields="${after.fields}" data-seen="${escaped(seen)}" data-old="${base64(utf8ToBytes(told))}"><button type="button">Show earlier values now (this is noted)</button></p>`;
}

function words(text: Text): string {
  return escaped(inEnglish(text));
}
