/** The languages that the interface is worded in, by their codes in BCP 47. */
export type Language = "en" | "ar";

/** Each language's name in itself. */
export const languageNames: Readonly<Record<Language, string>> = { en: "English", ar: "العربية" };

const known: readonly Language[] = ["en", "ar"];

/** Languages in which every word of the interface is there, offered to every reader. */
export const offered: readonly Language[] = ["en", "ar"];

const kept = "language";

/** The language of this reader, settled when the program starts: asked for in the address, chosen before, or the browser's. */
export const language: Language = settled();

/** Which way its lines run. */
export const direction: "ltr" | "rtl" = language === "ar" ? "rtl" : "ltr";

/** Whether the interface is mirrored. */
export const mirrored: boolean = direction === "rtl";

/** A key of the keyboard as it reads along the lines: in a mirrored interface the arrow to the left leads on. */
export function alongLines(key: string): string {
  if (!mirrored) return key;
  return key === "ArrowLeft" ? "ArrowRight" : key === "ArrowRight" ? "ArrowLeft" : key;
}

/** Languages to choose from: those offered, and the one that was asked for. */
export function choices(): readonly Language[] {
  return known.filter((one) => offered.includes(one) || one === language);
}

/** Takes another language for this and all later visits, at the place where the reader is. */
export function choose(next: Language): void {
  try {
    localStorage.setItem(kept, next);
  } catch {
    // A browser that keeps nothing still heeds the address.
  }
  const address = new URL(location.href);
  if (offered.includes(next)) address.searchParams.delete("lang");
  else address.searchParams.set("lang", next);
  history.replaceState(history.state, "", address);
  location.reload();
}

function settled(): Language {
  // Where there is no window, as in a worker or a test, the words are English.
  if (typeof location === "undefined" || typeof document === "undefined") return "en";
  const asked = as(new URLSearchParams(location.search).get("lang"));
  if (asked) return asked;
  const before = as(keptChoice());
  if (before && offered.includes(before)) return before;
  const wanted = navigator.languages.map((code) => as(code.split("-")[0] ?? ""));
  return wanted.find((one) => one !== null && offered.includes(one)) ?? "en";
}

function as(code: string | null): Language | null {
  return known.find((one) => one === code) ?? null;
}

function keptChoice(): string | null {
  try {
    return localStorage.getItem(kept);
  } catch {
    return null;
  }
}
