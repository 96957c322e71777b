import { createHash } from "node:crypto";
import { chained } from "../../../base/text/said/rows.ts";
import { say } from "../../../base/text/said/said.ts";
import { textOf } from "../../corpus-folder.ts";
import type { Disk } from "../disk.ts";
import { CannotWrite, Stale, kindsSeen, nothingWritten } from "../refusal.ts";
import type { StaleFile } from "../refusal.ts";
import { bytesSeenAs, seen, textSeen } from "./known.ts";

/** What stands at a path of a corpus: its bytes, null where there is nothing; refused where it is no file. */
export function bytesAt(disk: Disk, path: string, file: string): Uint8Array | null {
  const found = disk.see(path);
  if (!found) return null;
  if (found.kind !== "file")
    throw new CannotWrite(
      nothingWritten(say`Unexpected ${kindsSeen[found.kind]} at \`${file}\`, expected a file`),
    );
  return seen(disk.read(path));
}

/** Whether two files are the same, byte for byte; nothing is the same as nothing. */
export function isSame(a: Uint8Array | null, b: Uint8Array | null): boolean {
  return a === null || b === null || a === b ? a === b : Buffer.compare(a, b) === 0;
}

/** SHA-256 of bytes, in lower-case hexadecimal; null for none. */
export function hashOfBytes(bytes: Uint8Array): string;
export function hashOfBytes(bytes: Uint8Array | null): string | null;
export function hashOfBytes(bytes: Uint8Array | null): string | null {
  if (bytes === null) return null;
  const known = hashes.get(bytes);
  if (known !== undefined) return known;
  const hash = createHash("sha256").update(bytes).digest("hex");
  hashes.set(bytes, hash);
  return hash;
}

/** SHA-256 of a text's UTF-8 bytes, in lower-case hexadecimal. */
export function hashOfText(text: string): string {
  return hashOfBytes(bytesSeenAs(text) ?? Buffer.from(text, "utf8"));
}

const hashes = new WeakMap<Uint8Array, string>();

/** What there is to say of a file that is not as a change expected it. */
export function staleFile(file: string, bytes: Uint8Array | null): StaleFile {
  return { file, text: textIn(bytes) };
}

/** Bytes as text, a byte-order mark with it; null where there are none, or none that are text. */
export function textIn(bytes: Uint8Array | null): string | null {
  if (bytes === null) return null;
  const known = textSeen(bytes);
  if (known !== undefined) return known;
  const { text, problem } = textOf("", bytes);
  if (problem !== undefined) return null;
  seen(bytes, text);
  return text;
}

/** The refusal of changes that were made for other texts than now stand there; `wasThere` says of each whether it was to be there. */
export function stale(files: readonly (StaleFile & { readonly wasThere: boolean })[]): Stale {
  const said = files.map(({ file, text, wasThere }) =>
    text === null && wasThere
      ? say`\`${file}\` is gone, expected it as it was`
      : wasThere
        ? say`\`${file}\` was changed while the corpus was read, expected it as it was`
        : say`Unexpected file at \`${file}\`, expected none`,
  );
  return new Stale(
    nothingWritten(say`${chained(said, (before, next) => say`${before}; ${next}`)}`),
    files.map(({ file, text }) => ({ file, text })),
  );
}
