import { finding } from "../../base/finding.ts";
import type { Finding, Id, Level } from "../../base/finding.ts";
import type { QuantityKind } from "../../base/quantity.ts";
import { isShare } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { coded, say } from "../../base/text/said/said.ts";
import { unitTable } from "../../base/unit/unit-table.ts";
import { ownUnit } from "../../base/unit/unit.ts";
import type { Unit } from "../../base/unit/unit.ts";
import { decoderFor } from "../decode/decode.ts";
import { mendIn } from "../grammar/quoting.ts";
import { settingsFields } from "../grammar/settings.ts";
import type { SettingsValues } from "../grammar/settings.ts";
import type { SourceFile } from "../source-file.ts";
import { nodeAt } from "../yaml/tree.ts";
import type { MapNode } from "../yaml/tree.ts";
import { readYaml } from "../yaml/text.ts";
import { usesIn } from "./use.ts";
import type { Use } from "./use.ts";

/** A finding the scholar lives with. */
export interface Acceptance {
  readonly rule: string;
  readonly about: readonly Id[];
  readonly why: string;
}

/** A unit of the corpus's own: its size, who gave it, and the things it was found in. */
export interface OwnUnit extends Unit {
  readonly from: readonly Id[];
  readonly foundIn: readonly Id[];
}

/** A dimension as the settings declare it. */
export interface DimensionSetting {
  readonly name: string;
  readonly kind: QuantityKind | null;
  readonly also: readonly string[];
  readonly taken: string | null;
  readonly anySign: boolean;
  /** What it comes to exactly by other dimensions, as written. */
  readonly equals: readonly string[];
}

/** What `corpus.yaml` says, defaults filled in; sizes of effects are pure numbers (2.5 % is 0.025). */
export interface Settings {
  readonly title: string;
  readonly language: string;
  readonly authors: readonly { readonly name: string; readonly orcid?: string; readonly role?: string }[];
  readonly licence: string | null;
  readonly version: string | null;
  readonly citeAs: string | null;
  readonly bibliography: readonly string[];
  readonly measurementTables: readonly string[];
  readonly artefactTables: readonly string[];
  /** As written; null where none is named. */
  readonly citationStyle: string | null;
  /** The sections of the review, in their order; null where none are named. */
  readonly review: readonly string[] | null;
  readonly plusMinus: "standard" | "expanded";
  readonly testimony: boolean;
  readonly approximate: number;
  readonly reproducibility: number;
  readonly decimal: "point" | "comma";
  readonly costsIn: string;
  readonly units: readonly OwnUnit[];
  readonly dimensions: readonly DimensionSetting[];
  readonly rules: ReadonlyMap<string, Level | "off">;
  readonly accept: readonly Acceptance[];
  /** With what is withheld in the companion corpora, as it is called here. */
  readonly withhold: readonly Id[];
  /** The corpora whose artefacts and bibliographies are used. */
  readonly use: readonly Use[];
  /** How quantities are read in this corpus. */
  readonly quantities: QuantityContext;
  readonly file: string;
  readonly node: MapNode;
}

const startingContext: QuantityContext = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" };

/** Reads `corpus.yaml`; null settings when it cannot be read at all. */
export function readSettings(file: SourceFile): { settings: Settings | null; findings: readonly Finding[] } {
  const yaml = readYaml(file.path, file.text, mendIn(startingContext));
  if (!yaml.root) return { settings: null, findings: yaml.findings };
  const { root } = yaml;
  const decoder = decoderFor(file.path, startingContext);
  const values = (decoder.map(yaml.root, settingsFields) ?? {
    title: file.path,
  }) as unknown as SettingsValues;
  const extra: Finding[] = [];
  if (values.format !== undefined && values.format !== 1) {
    const message = say`Unexpected format ${String(values.format)}, expected 1`;
    extra.push(
      finding("bad-value", message, { file: file.path, start: yaml.root.start, end: yaml.root.start + 1 }),
    );
  }
  const units: OwnUnit[] = [];
  for (const [name, { is, also = [], from = [], "found-in": foundIn = [] }] of values.units ?? []) {
    const keys = from.map((citation) => citation.key);
    const unit = ownUnit(name, [name.replace(/-/g, " "), ...also], is, keys[0] ?? "the corpus");
    if (unit) units.push({ ...unit, from: keys, foundIn });
    else {
      const { start, end } = nodeAt(yaml.root, ["units", name, "is"]);
      const message = say`Unexpected size \`${is.text}\`, expected a value above 0`;
      extra.push(finding("bad-value", message, { file: file.path, start, end }));
    }
  }
  const share = (name: "approximate" | "reproducibility", otherwise: number): number => {
    const { [name]: given } = values;
    if (given === undefined || isShare(given)) return given?.value ?? otherwise;
    const { start, end } = nodeAt(root, [name]);
    const message = say`Unexpected share \`${given.text}\`, expected one such as ${coded("1 %")}`;
    extra.push(finding("bad-value", message, { file: file.path, start, end }));
    return otherwise;
  };
  const plusMinus = values["plus-minus"] ?? "standard";
  const approximate = share("approximate", 0.025);
  const used = usesIn(values.use ?? [], file.path, root);
  extra.push(...used.findings);
  const settings: Settings = {
    title: values.title,
    language: values.language ?? "en",
    authors: values.authors ?? [],
    licence: values.licence ?? null,
    version: values.version ?? null,
    citeAs: values["cite-as"] ?? null,
    bibliography: values.bibliography ?? [],
    measurementTables: values["measurement-tables"] ?? [],
    artefactTables: values["artefact-tables"] ?? [],
    citationStyle: values["citation-style"] ?? null,
    review: values.review ?? null,
    plusMinus,
    testimony: values.testimony === "counts",
    approximate,
    reproducibility: share("reproducibility", 0.01),
    decimal: values.decimal ?? "point",
    costsIn: values["costs-in"] ?? "days",
    units,
    dimensions: [...(values.dimensions ?? [])].map(([name, one]) => ({
      name,
      kind: one.kind ?? null,
      also: one.also ?? [],
      taken: one.taken ?? null,
      anySign: one.sign === "any",
      equals: one.equals ?? [],
    })),
    rules: levelsOf(values.rules ?? new Map(), file.path, yaml.root, extra),
    accept: (values.accept ?? []).map((one) => ({ rule: one.rule, about: one.about ?? [], why: one.why })),
    withhold: values.withhold ?? [],
    use: used.use,
    quantities: { units: unitTable(units), approximate, plusMinus },
    file: file.path,
    node: yaml.root,
  };
  return { settings, findings: [...yaml.findings, ...decoder.findings, ...extra] };
}

function levelsOf(
  rules: ReadonlyMap<string, string>,
  file: string,
  root: MapNode,
  findings: Finding[],
): ReadonlyMap<string, Level | "off"> {
  const levels = new Map<string, Level | "off">();
  const node = root.entries.find((entry) => entry.key === "rules")?.value;
  for (const [rule, level] of rules) {
    if (level === "off" || level === "note" || level === "warning") levels.set(rule, level);
    else {
      const entry = node?.is === "map" ? node.entries.find((one) => one.key === rule) : undefined;
      const at = {
        file,
        start: entry?.value.start ?? root.start,
        end: entry?.value.end ?? Math.min(root.start + 1, root.end),
      };
      findings.push(
        finding(
          "bad-value",
          say`Unexpected level \`${level}\`, expected ${"off"}, ${"note"} or ${"warning"}`,
          at,
        ),
      );
    }
  }
  return levels;
}
