import { crc32 } from "node:zlib";

/** What stands before all else: by whom the parts were put together, how many bytes each has, and a sum of these numbers and all that follows. */
interface Head {
  readonly edition: string;
  readonly lengths: readonly number[];
  /** CRC-32: it tells bytes that were spoilt, and is no seal. */
  readonly sum: number;
}

/** Parts begin at multiples of so many bytes, where numbers of any kind may lie. */
const step = 8;

/** Parts as the bytes of one file; `edition` names the program, since another may understand them otherwise. */
export function joined(edition: string, parts: readonly ArrayBufferView[]): Uint8Array {
  const rest = Buffer.concat(parts.flatMap((part) => [bytesOf(part), gapAfter(part.byteLength)]));
  const lengths = parts.map(({ byteLength }) => byteLength);
  const head: Head = { edition, lengths, sum: sumOf(lengths, rest) };
  const line = Buffer.from(JSON.stringify(head), "utf8");
  return Buffer.concat([line, gapAfter(line.length + 1), Buffer.from("\n"), rest]);
}

/** The parts of a file; none where another edition of the program wrote it, null where it is spoilt. */
export function parted(edition: string, bytes: Uint8Array): readonly Buffer[] | null {
  const all = aligned(bytes);
  const end = all.indexOf(10);
  const head = headIn(all.toString("utf8", 0, end));
  if (typeof head?.edition !== "string") return null;
  if (head.edition !== edition) return [];
  if (!Array.isArray(head.lengths)) return null;
  const { lengths } = head;
  const rest = all.subarray(end + 1);
  if (sumOf(lengths, rest) !== head.sum) return null;
  let at = 0;
  return lengths.map((length) => {
    const part = rest.subarray(at, at + length);
    at += length + gapAfter(length).length;
    return part;
  });
}

function sumOf(lengths: readonly number[], rest: Uint8Array): number {
  return crc32(rest, crc32(JSON.stringify(lengths)));
}

function headIn(line: string): Partial<Head> | null {
  try {
    return JSON.parse(line) as Partial<Head> | null;
  } catch {
    return null;
  }
}

function gapAfter(length: number): Uint8Array {
  return Buffer.alloc((step - (length % step)) % step, " ");
}

function aligned(bytes: Uint8Array): Buffer {
  const { buffer, byteOffset, byteLength } = bytes.byteOffset % step === 0 ? bytes : Uint8Array.from(bytes);
  return Buffer.from(buffer as ArrayBuffer, byteOffset, byteLength);
}

function bytesOf({ buffer, byteOffset, byteLength }: ArrayBufferView): Uint8Array {
  return new Uint8Array(buffer as ArrayBuffer, byteOffset, byteLength);
}

/** A part as whole numbers below 2^32. */
export function wholesIn({ buffer, byteOffset, byteLength }: Uint8Array): Uint32Array {
  return new Uint32Array(buffer as ArrayBuffer, byteOffset, byteLength / Uint32Array.BYTES_PER_ELEMENT);
}

/** A part as numbers. */
export function numbersIn({ buffer, byteOffset, byteLength }: Uint8Array): Float64Array {
  return new Float64Array(buffer as ArrayBuffer, byteOffset, byteLength / Float64Array.BYTES_PER_ELEMENT);
}
