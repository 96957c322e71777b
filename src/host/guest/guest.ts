import type { Json } from "../../base/json.ts";
import { coded, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Outcome, Run } from "../../derive/run.ts";
import { isRefusal } from "../../plugin.ts";
import { aboutSchema, readAs, resultIn, sentenceSchema, tidy } from "./contract.ts";
import type { Declarations } from "./contract.ts";
import { figureSchema } from "./drawn.ts";
import { namesOnly } from "./names.ts";
import { askGuest, computing, declaring } from "./sandbox.ts";
import type { GuestText, Limits } from "./sandbox.ts";

/** A plug-in of a corpus that the user allowed: its name, its file, and the hash of the file's text. */
export interface Guest extends GuestText {
  readonly name: string;
  readonly hash: string;
}

/** A guest with what it says of itself; or, with no declarations, what is wrong with it. */
export interface Declared extends Guest {
  readonly about: Declarations | null;
  readonly trouble: Text | null;
}

/** Asks a guest what it is, in the sandbox. */
export async function declaredBy(
  engine: WebAssembly.Module,
  guest: Guest,
  limits: Limits = declaring,
): Promise<Declared> {
  const answer = await askGuest(engine, guest, { ask: "describe" }, limits);
  const read = "trouble" in answer ? answer : aboutIn(guest, toldIn(answer.said));
  return "trouble" in read
    ? { ...guest, about: null, trouble: troubleWith(guest, read.trouble) }
    : { ...guest, about: read, trouble: null };
}

/**
 * Computes a run in the sandbox; whatever the guest does, an outcome comes of it. It is held to what it declared when it
 * was asked what it is, whatever it would declare now.
 */
export async function runGuest(
  engine: WebAssembly.Module,
  guest: Declared,
  run: Run,
  options: { readonly limits?: Limits; readonly report?: (done: number) => void } = {},
): Promise<Outcome> {
  const { about } = guest;
  if (about === null) return { status: "failed", why: guest.trouble ?? troubleWith(guest, say`it is none`) };
  const { inputs, settings, looks, recorded } = run;
  const given = JSON.stringify({ inputs, settings, looks, recorded });
  const seed = Number.parseInt(run.key.slice(0, 8), 16) | 0;
  const question = { ask: "compute", given, seed } as const;
  const answer = await askGuest(engine, guest, question, options.limits ?? computing, options.report);
  if (!("trouble" in answer)) return outcomeOf(guest, about, run, toldIn(answer.said));
  const failed = { status: "failed", why: troubleWith(guest, answer.trouble) } as const;
  return answer.passing ? { ...failed, passing: true } : failed;
}

/** The sentence about a guest that did not do what a plug-in does. */
export function troubleWith(guest: Pick<Guest, "name">, trouble: Text): Said {
  const why = typeof trouble === "string" ? tidy(trouble) : trouble;
  return say`The plug-in \`${guest.name}\` of this corpus gave no result: ${why}`;
}

type Told = Readonly<Record<string, unknown>>;

/** What a guest said; it need not be what it was asked for, since the guest may have spoilt the language it is told in. */
function toldIn(said: string): Told {
  try {
    const told: unknown = JSON.parse(said);
    return typeof told === "object" && told !== null ? (told as Told) : {};
  } catch {
    return {};
  }
}

function aboutIn(guest: Guest, said: Told): Declarations | { readonly trouble: Text } {
  const read = readAs(aboutSchema, said["about"]);
  if ("trouble" in read) return read;
  const { made } = read;
  if (made.id !== guest.name)
    return { trouble: say`its ${coded("id")} is \`${tidy(made.id)}\`, expected the name of its file` };
  return made as Declarations;
}

function outcomeOf(guest: Guest, about: Declarations, run: Run, said: Told): Outcome {
  const failed = (why: Text): Outcome => ({ status: "failed", why: troubleWith(guest, why) });
  const read = resultIn(said["result"], about, idsIn(run));
  if ("trouble" in read) return failed(say`its result has ${tidy(read.trouble)}`);
  const { result } = read;
  if (isRefusal(result)) return { status: "refused", reason: result.refused, why: result.message };

  const drawn = attempted(said["figure"]);
  if ("trouble" in drawn) return failed(brokeOff("figure", drawn.trouble));
  const figure = readAs(figureSchema, drawn.made ?? { title: about.title, panels: [] });
  if ("trouble" in figure) return failed(say`its figure has ${tidy(figure.trouble)}`);
  const put = attempted(said["sentence"]);
  if ("trouble" in put) return failed(brokeOff("sentence", put.trouble));
  const sentence = readAs(sentenceSchema, put.made);
  if ("trouble" in sentence) return failed(say`its sentence has ${tidy(sentence.trouble)}`);
  const made = { figure: figure.made, sentence: sentence.made } as unknown as Json;
  const data = namesOnly(made, new Set([...idsIn(run), ...namedIn(run)]));
  return { status: "computed", ...result, data };
}

const brokeOff = (what: string, trouble: string): Said => say`${coded(what)} broke off: ${tidy(trouble)}`;

function attempted(part: unknown): { readonly made: unknown } | { readonly trouble: string } {
  const { made, trouble } = (part ?? {}) as { readonly made?: unknown; readonly trouble?: unknown };
  return typeof trouble === "string" ? { trouble: trouble.replace(/^!/, "") } : { made };
}

/** Everything that a run gave, by its id: what a guest may leave out. */
function idsIn({ inputs, recorded }: Run): ReadonlySet<string> {
  const measured = Object.values(inputs).flat();
  const observed = Object.values(recorded?.observations ?? {}).flat();
  const dated = Object.values(recorded?.dates ?? {}).flatMap((one) => one.statements);
  return new Set([...measured, ...observed, ...dated].map((one) => one.id));
}

/** What else a guest can know the id of: the artefacts and sources of what it was given. */
function namedIn({ inputs, recorded }: Run): readonly string[] {
  const measured = Object.values(inputs).flat();
  const observed = Object.values(recorded?.observations ?? {}).flat();
  const dates = Object.values(recorded?.dates ?? {});
  return [
    ...measured.flatMap((one) => [one.artefact, one.source ?? ""]),
    ...observed.flatMap((one) => [...one.artefacts, one.source ?? "", ...one.alsoFrom, ...one.by]),
    ...dates.flatMap((one) => [
      ...one.events.map((event) => event.record),
      ...one.statements.map((statement) => statement.record),
    ]),
  ].flatMap((id) => id ?? []);
}
