import { send } from "../model/corpus.ts";

/** Drafts that wait to be written to the desk, by their names; null where one is to be taken away. */
const waiting = new Map<string, unknown>();
let writing: Promise<void> | null = null;

/** Keeps something unfinished at the desk under a name, soon, its latest state alone; null takes it away. */
export function keepAtDesk(name: string, value: unknown): void {
  waiting.set(name, value);
  writing ??= written();
}

async function written(): Promise<void> {
  for (let [next] = waiting; next; [next] = waiting) {
    const [name, value] = next;
    waiting.delete(name);
    await (value === null
      ? send(`drafts/${name}`, undefined, "DELETE")
      : send(`drafts/${name}`, value, "PUT"));
  }
  writing = null;
}

/** Something kept at the desk, with the name it has there. */
export interface Kept {
  readonly name: string;
  readonly value: unknown;
}

/** Everything that the desk keeps under names with a beginning, in the order in which it was begun. */
export async function keptAtDesk(beginning: string): Promise<readonly Kept[]> {
  await writing;
  const { status, text } = await send("drafts", undefined, "GET");
  if (status !== 200) return [];
  const { drafts } = JSON.parse(text) as { readonly drafts: readonly string[] };
  const own = drafts.filter((name) => name.startsWith(beginning));
  const found = await Promise.all(own.map((name) => send(`drafts/${name}`, undefined, "GET")));
  return found.flatMap((one, place): readonly Kept[] =>
    one.status === 200 ? [{ name: own[place] ?? "", value: JSON.parse(one.text) as unknown }] : [],
  );
}

/** A name for something new with a beginning of its own: later ones come after earlier ones. */
export function newDraftName(beginning: string): string {
  const moment = Date.now().toString(36).padStart(9, "0");
  return `${beginning}${moment}-${crypto.getRandomValues(new Uint16Array(1))[0] ?? 0}`;
}
