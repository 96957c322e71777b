/**
 * What a visit sheet does by itself on a laptop: keeps what is typed in the browser, tells earlier values once a row's
 * readings are in, or sooner on purpose, which it notes, and saves all of it as a file for the corpus.
 */
export const script = `
"use strict";
const about = JSON.parse(document.getElementById("about").textContent);
const name = "variorum sheet " + JSON.stringify([about.corpus, about.asked]);
const fields = [...document.querySelectorAll("[data-at]")];
const pathOf = (field) => JSON.parse(field.dataset.at);
const seen = new Set();
const filled = () => {
  const whole = { by: "", on: "" };
  const put = (path, value) => {
    let at = whole;
    path.forEach((step, place) => {
      const last = place === path.length - 1;
      if (last) at[step] = value;
      else at = at[step] ??= typeof path[place + 1] === "number" ? [] : {};
    });
  };
  for (const field of fields) put(pathOf(field), field.value);
  for (const path of seen) put(JSON.parse(path), true);
  return whole;
};
const state = document.getElementById("state");
const keep = () => {
  try {
    localStorage.setItem(name, JSON.stringify(filled()));
    state.textContent = about.kept;
  } catch {
    state.textContent = about.notKept;
  }
};
const tell = (row, onPurpose) => {
  const place = row.querySelector(".after");
  if (!place || place.dataset.told) return;
  place.dataset.told = "yes";
  if (onPurpose) seen.add(place.dataset.seen);
  const bytes = Uint8Array.from(atob(place.dataset.old), (sign) => sign.charCodeAt(0));
  place.textContent = new TextDecoder().decode(bytes);
};
const look = (row) => {
  const place = row.querySelector(".after");
  const written = [...row.querySelectorAll("[data-counts]")].filter((field) => field.value.trim() !== "").length;
  if (place && written >= Number(place.dataset.fields)) tell(row, false);
};
const before = (() => {
  try {
    return JSON.parse(localStorage.getItem(name)) ?? {};
  } catch {
    return {};
  }
})();
const valueAt = (path) => path.reduce((at, step) => (at && Object.hasOwn(at, step) ? at[step] : undefined), before);
for (const field of fields) {
  const value = valueAt(pathOf(field));
  if (typeof value === "string") field.value = value;
}
for (const row of document.querySelectorAll(".row")) {
  const place = row.querySelector(".after");
  if (place && valueAt(JSON.parse(place.dataset.seen)) === true) tell(row, true);
  look(row);
  row.addEventListener("input", () => { look(row); keep(); });
  row.querySelector(".after button")?.addEventListener("click", () => { tell(row, true); keep(); });
}
for (const leaf of document.querySelectorAll(".leaf")) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "unfold";
  button.textContent = about.unfold;
  leaf.dataset.folded = "yes";
  leaf.querySelector("h2").after(button);
  button.addEventListener("click", () => { delete leaf.dataset.folded; button.remove(); });
}
document.getElementById("save").addEventListener("click", () => {
  const text = '{"variorum-visit":1,\\n"asked":' + JSON.stringify(about.asked) + ',\\n"filled":' + JSON.stringify(filled(), null, 1) + "}\\n";
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = about.file;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  state.textContent = about.saved;
});
`;
