import type { SourceFile } from "../../build.ts";

/** How the program names an answer that is lines of JSON. */
export const inLines = "application/jsonl";

type Bytes = Uint8Array<ArrayBuffer>;

/** The first line of an answer, and the bytes behind it as they come. */
export async function headOf<Head>(answer: Response): Promise<readonly [Head, AsyncIterable<Bytes>]> {
  const reader = answer.body?.getReader();
  if (!reader) throw new TypeError("The answer has no body");
  let begun: Bytes = new Uint8Array();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) throw new TypeError("The answer ended before its time");
    const joined = new Uint8Array(begun.length + value.length);
    joined.set(begun);
    joined.set(value, begun.length);
    const end = joined.indexOf(lineEnd);
    begun = joined;
    if (end < 0) continue;
    const head = JSON.parse(new TextDecoder().decode(joined.subarray(0, end))) as Head;
    return [head, behind(joined.slice(end + 1), reader)];
  }
}

const lineEnd = 10;

async function* behind(
  begun: Bytes,
  reader: ReadableStreamDefaultReader<Bytes>,
): AsyncGenerator<Bytes, void> {
  if (begun.length > 0) yield begun;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    yield value;
  }
}

/** The files that follow a head, where they are few. */
export async function filesIn(rest: AsyncIterable<Bytes>): Promise<readonly SourceFile[]> {
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  let text = "";
  for await (const bytes of rest) text += decoder.decode(bytes, { stream: true });
  const lines = text.split("\n").filter((line) => line !== "");
  return lines.flatMap((line) => JSON.parse(line) as readonly SourceFile[]);
}
