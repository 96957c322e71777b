import type { Chance } from "./chance.ts";
import type { Printed } from "./print/literature.ts";
import type { Sheets } from "./records.ts";
import { portion } from "./shares.ts";
import type { Shares } from "./shares.ts";
import { features, quotes } from "./words.ts";
import type { sites } from "./words.ts";

/** What a dispute is about: a thing in a place, with its parts. */
export interface Site {
  readonly id: string;
  readonly name: string;
  readonly kind: (typeof sites)[number];
  readonly parts: readonly string[];
  readonly partName: (id: string) => string;
}

/** What a dispute is made with. */
export interface Matter {
  readonly place: number;
  readonly site: Site;
  readonly sources: readonly Printed[];
  readonly shares: Shares;
  readonly chance: Chance;
  readonly sheets: Sheets;
}

/** Something that an argument can lean on, and since which of the dispute's sources it is in print. */
export interface Evidence {
  readonly id: string;
  readonly since: number;
  /** It passes something over in silence, and carries nothing alone. */
  readonly silent?: boolean;
}

/** How many of a kind fall to a dispute. */
export function quota({ shares, place }: Matter, kind: keyof Shares): number {
  return portion(shares[kind], place, shares.disputes);
}

/** The thing and its parts, with histories, keepers and access; one place is withheld. */
export function dig(matter: Matter): void {
  const { site, sources, sheets, chance, place } = matter;
  const file = `things/${site.id}.yaml`;
  const first = sources[0];
  sheets.add(file, "artefacts", {
    id: site.id,
    name: site.name,
    short: site.name.length > 40 ? site.kind.kind : undefined,
    kind: site.kind.kind,
    material: site.kind.material,
    "found-at": `the east side, by milestone ${place + 3}`,
    coordinates: `survey grid ${4000 + place} ${7000 - place}`,
    "withhold-location": place % 4 === 1 ? "true" : undefined,
    history: first
      ? [
          {
            when: String(first.year - 1),
            what: "opened for the first time",
            kind: "excavation",
            from: first.key,
          },
        ]
      : undefined,
    access: {
      keeper: "the commoners",
      permit: "consent of the heritage authority for any digging",
      "lead-time": "two months",
    },
  });
  for (const [n, part] of site.parts.entries()) {
    const later = chance.pick(sources);
    sheets.add(file, "artefacts", {
      id: part,
      name: site.partName(part),
      kind: site.kind.part,
      numbers: n % 2 === 0 ? { excavation: `${site.kind.part.charAt(0).toUpperCase()}${n + 1}` } : undefined,
      history: chance.of(0.12)
        ? [
            {
              when: String(later.year - 1),
              what: "packed and marked",
              kind: chance.pick(["restoration", "conservation"]),
              from: later.key,
            },
          ]
        : undefined,
    });
  }
  for (let n = 0; n < quota(matter, "images"); n++) {
    sheets.add(file, "images", {
      id: `${site.id}-plan-${n + 1}`,
      of: site.id,
      file: `images/${site.id}-${n + 1}.svg`,
      kind: "drawing",
      credit: "drawn for this corpus",
      licence: "CC0-1.0",
    });
  }
}

/** Passages with quotations in the source's language, by the source they are in. */
export function excerpt(matter: Matter): ReadonlyMap<string, readonly string[]> {
  const { sources, sheets, chance } = matter;
  const found = new Map<string, readonly string[]>();
  for (let n = 0; n < quota(matter, "passages"); n++) {
    const source = chance.pick(sources);
    const ids = found.get(source.key) ?? [];
    const id = `${source.key}-p${ids.length + 1}`;
    found.set(source.key, [...ids, id]);
    sheets.add(
      source.file,
      "passages",
      {
        id,
        at: `p. ${chance.between(1, 60)}${chance.of(0.2) ? `, fig. ${chance.between(1, 9)}` : ""}`,
        quote: chance.pick(quotes[source.lang] ?? quotes["en"] ?? []),
        lang: source.lang,
        translation: source.lang === "en" || chance.of(0.5) ? undefined : "No more can be said.",
      },
      source.key,
    );
  }
  return found;
}

const bases = ["autopsy", "autopsy", "photograph", "drawing", "report", "cast", "scan", "replica"] as const;
const presents = ["true", "true", "true", "true", "false", "unclear", "not-reported"] as const;

/** What was seen, missed or passed over, each in its source's file. */
export function observe(matter: Matter): readonly Evidence[] {
  const { site, sources, sheets, chance } = matter;
  return Array.from({ length: quota(matter, "observations") }, (_, n): Evidence => {
    const since = chance.between(0, sources.length - 1);
    const source = sources[since] ?? chance.pick(sources);
    const [feature, sentence] = chance.pick(features);
    const of = chance.of(0.85) ? [chance.pick(site.parts)] : chance.some(site.parts, 3);
    const present = chance.pick(presents);
    const told = {
      true: sentence,
      false: `there is no ${feature}, though it was looked for`,
      unclear: `whether there is ${feature} cannot be told`,
      "not-reported": `nothing is said of ${feature}`,
    }[present];
    const id = `${site.id}-seen-${n + 1}`;
    const second = chance.of(0.1) && since > 0 ? sources[since - 1] : undefined;
    sheets.add(
      source.file,
      "observations",
      {
        id,
        of,
        text: `In ${of.map((one) => site.partName(one)).join(" and ")} ${told}.`,
        feature,
        present,
        basis: second ? "report" : chance.pick(bases),
        year: source.year - chance.between(0, 2),
        from: `${source.key} p. ${chance.between(1, 60)}`,
        via: second ? `${source.key} p. 2` : undefined,
      },
      source.key,
    );
    return { id, since, silent: present === "not-reported" };
  });
}
