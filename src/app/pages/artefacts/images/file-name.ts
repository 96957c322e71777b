import { portable } from "../../../../read/source-file.ts";

/** The name below `images/` under which a picture comes in: signs that file names have no use for are `-`, and nothing there is met. */
export function freeName(given: string, taken: readonly string[]): string {
  const [, stem = "", ending = ""] = /^(.*)\.([^.]+)$/u.exec(given.normalize("NFC")) ?? [];
  const plain =
    stem
      .replace(/[^\p{L}\p{N}._-]+/gu, "-")
      .replace(/^[-.]+|[-.]+$/gu, "")
      .slice(0, 80) || "picture";
  // On some disks `A` and `a` are one name.
  const there = new Set(taken.map((one) => one.toLowerCase()));
  for (let count = 1; ; count++) {
    const file = `images/${portable(plain)}${count === 1 ? "" : `-${String(count)}`}.${ending.toLowerCase()}`;
    if (!there.has(file.toLowerCase())) return file;
  }
}
