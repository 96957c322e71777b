import { foldScript } from "./fold.ts";

/**
 * What runs in the page: it shows one section at a time, by the address; it sets every standing, sentence and map to a year;
 * it searches. It writes texts and attributes only, never markup.
 */
export const script = String.raw`
(() => {
"use strict";
${foldScript}
const { years, course, said, sentences } = JSON.parse(document.getElementById("course").textContent);
const all = (what, where = document) => [...where.querySelectorAll(what)];
const one = (id) => document.getElementById(id);
const root = document.documentElement;
const main = one("main"), found = one("found"), notice = one("notice"), input = one("words"), select = one("year");
const pages = all(".page");
const names = { s: "stands", o: "open", f: "falls", u: "unsupported" };
let at = years.length - 1, open = null, marks = null;
root.classList.add("paged");
one("tools").hidden = false;

const letterOf = (place) => (course[place] || "")[at] || "-";
const isLater = (element) => element.dataset.r !== undefined && letterOf(element.dataset.r) === "-";
const sentenceOf = (place) => {
  let text = "";
  for (const [from, number] of said[place] || []) if (from <= at) text = sentences[number];
  return text;
};
const titleOf = (page) => (page.querySelector("h1, h2") || page).textContent;

function ofYear(where) {
  const year = years[at], last = at === years.length - 1;
  for (const element of all("[data-r]", where)) if (!element.classList.contains("page")) element.hidden = isLater(element);
  for (const element of all("[data-since]", where)) element.hidden = year !== null && Number(element.dataset.since) > year[0];
  for (const element of all("[data-m]", where)) {
    const name = names[letterOf(element.dataset.m)] || "none";
    element.className = "m " + name;
    element.querySelector("use").setAttribute("href", "#line-" + name);
    element.querySelector("b").textContent = name === "none" ? "" : name;
  }
  for (const element of all("[data-w]", where)) element.textContent = sentenceOf(element.dataset.w);
  for (const element of all("[data-y]", where)) {
    const shown = element.dataset.y.split(" ").some((range) => {
      const [from, to = from] = range.split("-").map(Number);
      return from <= at && at <= to;
    });
    if (shown) element.removeAttribute("display");
    else element.setAttribute("display", "none");
  }
  for (const element of all(".now", where)) element.hidden = !last;
}

function tell() {
  const year = years[at], last = at === years.length - 1;
  root.classList.toggle("earlier", !last);
  one("earlier").disabled = at === 0;
  one("later").disabled = last;
  const told = [];
  if (!last && open) {
    told.push("As of " + year[1] + ".");
    if (isLater(open)) told.push("It is not in print yet.");
    else if (open.querySelector(".now")) told.push("What is told of the whole record alone is not shown.");
  }
  notice.textContent = told.join(" ");
  notice.hidden = told.length === 0;
}

function show(page, focus) {
  open = page;
  found.hidden = true;
  for (const other of pages) other.classList.toggle("open", other === page);
  ofYear(page);
  tell();
  document.title = titleOf(page);
  for (const map of all(".map", page)) map.scrollLeft = Number(map.dataset.x) + 100 - map.clientWidth / 2;
  for (const link of all("nav a")) {
    if (decodeURIComponent(link.hash.slice(1)) === page.id) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
  if (!focus) return;
  (page.querySelector("h1, h2") || page).focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

function wanted() {
  let id = location.hash.slice(1);
  try { id = decodeURIComponent(id); } catch { id = ""; }
  return pages.find((page) => page.id === id) || pages[0];
}

function toYear(next) {
  at = Math.max(0, Math.min(years.length - 1, next));
  select.value = String(at);
  if (open) ofYear(open);
  tell();
  if (!found.hidden) search();
}

function search() {
  const words = fold(input.value).split(" ").filter((word) => word !== "");
  const list = found.querySelector("ul");
  list.replaceChildren();
  if (words.length === 0) { if (!found.hidden) show(wanted(), false); return; }
  marks = marks || pages.filter((page) => page.id.startsWith("r-")).map((page) => {
    const name = " " + fold(titleOf(page)), whole = " " + fold(page.textContent) + " " + fold(page.id.slice(2));
    return { page, name, whole };
  });
  const hits = marks
    .filter(({ page, whole }) => !isLater(page) && words.every((word) => whole.includes(" " + word)))
    .map((hit) => ({ ...hit, weight: words.filter((word) => hit.name.includes(" " + word)).length }))
    .sort((a, b) => b.weight - a.weight);
  for (const { page } of hits.slice(0, 100)) {
    const item = document.createElement("li"), kind = document.createElement("span"), link = document.createElement("a");
    kind.className = "how";
    kind.textContent = page.querySelector(".kind").textContent;
    link.href = "#" + encodeURIComponent(page.id);
    link.dir = "auto";
    link.textContent = titleOf(page);
    item.append(kind, " ", link);
    list.append(item);
  }
  const more = hits.length > 100 ? ", the first 100 of them here" : "";
  one("count").textContent = hits.length === 0 ? "Nothing has these words." : hits.length === 1 ? "One record" : hits.length + " records" + more;
  for (const page of pages) page.classList.remove("open");
  notice.hidden = true;
  found.hidden = false;
}

window.addEventListener("hashchange", () => {
  if (location.hash === "#main") return;
  input.value = "";
  show(wanted(), true);
});
document.addEventListener("click", (event) => {
  const link = event.target.closest ? event.target.closest("a") : null;
  if (!link) return;
  const to = link.getAttribute("href");
  // To where one is already, but for the search that lies over it.
  if (to === location.hash && !found.hidden) { input.value = ""; show(wanted(), true); }
});
one("tools").addEventListener("submit", (event) => {
  event.preventDefault();
  const first = found.querySelector("a");
  if (!found.hidden && first) first.focus();
});
input.addEventListener("input", search);
input.addEventListener("keydown", (event) => {
  if (event.key === "Escape") { input.value = ""; search(); }
});
select.addEventListener("change", () => toYear(Number(select.value)));
one("earlier").addEventListener("click", () => toYear(at - 1));
one("later").addEventListener("click", () => toYear(at + 1));
show(wanted(), false);
})();
`;
