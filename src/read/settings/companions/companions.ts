import { finding } from "../../../base/finding.ts";
import type { Finding, Id, Span } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { SourceFile } from "../../source-file.ts";
import { nodeAt } from "../../yaml/tree.ts";
import type { Settings } from "../settings.ts";
import type { Use } from "../use.ts";
import { keptApart } from "./kept-apart.ts";
import type { Own } from "./kept-apart.ts";
import { nothingTaken, takenOf } from "./corpus.ts";
import type { FileReader, TakenOfOne, Companion } from "./corpus.ts";
import type { Taken } from "./taken.ts";

/** What is taken from all companion corpora, and what they withhold. */
interface TakenFromAll extends Taken {
  readonly companions: readonly Companion[];
  readonly withhold: readonly Id[];
}

/** A reading with what is taken from the companion corpora in its settings, and what is withheld there withheld here too. */
export function withTaken<
  R extends Own & { readonly settings: Settings; readonly findings: readonly Finding[] },
>(
  reading: R,
  others: ReadonlyMap<string, readonly SourceFile[]>,
  reader: FileReader,
): R & { readonly companions: readonly Companion[] } {
  const { settings } = reading;
  const own = keptApart(reading, settings.use);
  const taken = takenFrom(settings, others, reader);
  return {
    ...reading,
    settings: withholding(settings, taken.withhold),
    sources: [...own.sources, ...taken.sources],
    records: [...own.records, ...taken.records],
    spoilt: [...own.spoilt, ...taken.spoilt],
    companions: taken.companions,
    findings: [...reading.findings, ...own.findings, ...taken.findings],
  };
}

const withheldBefore = new WeakMap<Settings, Settings>();

/** The settings that withhold more; the same object as before where that is the same. */
function withholding(settings: Settings, more: readonly Id[]): Settings {
  if (more.length === 0) return settings;
  const withhold = [...settings.withhold, ...more];
  const before = withheldBefore.get(settings);
  if (
    before?.withhold.length === withhold.length &&
    before.withhold.every((id, place) => id === withhold[place])
  )
    return before;
  const merged = { ...settings, withhold };
  withheldBefore.set(settings, merged);
  return merged;
}

/** Reads the companion corpora of the settings, from the files of each by its folder. */
function takenFrom(
  settings: Settings,
  others: ReadonlyMap<string, readonly SourceFile[]>,
  reader: FileReader,
): TakenFromAll {
  const all = settings.use.map((use): TakenOfOne => {
    const taken = takenOf(use, others.get(use.folder) ?? [], reader);
    if (taken?.beyond) return { ...taken, findings: [...taken.findings, notFollowed(settings, use)] };
    const findings = [missing(settings, use)];
    return (
      taken ?? {
        companion: { ...use, title: null, licence: null },
        withhold: [],
        ...nothingTaken,
        beyond: false,
        findings,
      }
    );
  });
  return {
    companions: all.map((one) => one.companion),
    withhold: all.flatMap((one) => one.withhold),
    sources: all.flatMap((one) => one.sources),
    records: all.flatMap((one) => one.records),
    spoilt: all.flatMap((one) => one.spoilt),
    findings: all.flatMap((one) => one.findings),
  };
}

function missing(settings: Settings, use: Use): Finding {
  const message = say`Missing corpus in \`${use.folder}\`, expected a folder with a \`${"corpus.yaml"}\``;
  return finding("unreadable-file", message, placeOf(settings, use));
}

function notFollowed(settings: Settings, use: Use): Finding {
  const message = say`Records in \`${use.folder}\` name what that corpus uses from another, which is not followed from here`;
  return finding("unknown-reference", message, placeOf(settings, use), { level: "note" });
}

/** Where the settings name the folder of a companion corpus. */
function placeOf(settings: Settings, { folder }: Use): Span {
  const list = settings.node.entries.find(({ key }) => key === "use")?.value;
  const items = list?.is === "list" ? list.items : list ? [list] : [];
  const item = items.find((one) => {
    const node = nodeAt(one, ["folder"]);
    return node.is === "text" && node.text === folder;
  });
  const { start, end } = nodeAt(item ?? settings.node, ["folder"]);
  return { file: settings.file, start, end };
}
