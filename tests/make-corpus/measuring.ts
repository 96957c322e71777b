import type { Chance } from "./chance.ts";
import { quota } from "./ground.ts";
import type { Evidence, Matter } from "./ground.ts";

/** A length in metres as somebody may print it: with its uncertainty, as a range, in feet; where it may be vague, as a bound or about. */
export function lengthText(metres: number, chance: Chance, vague: boolean): string {
  const cm = metres * 100;
  const whole = Math.max(1, Math.round(cm));
  const feet = Math.floor(metres / 0.3048);
  const inches = Math.round(metres / 0.0254) - feet * 12;
  switch (chance.between(0, 9)) {
    case 0:
      return `${whole}–${whole + chance.between(1, 4)} cm`;
    case 1:
      return vague ? `≥ ${whole} cm` : `${whole} cm`;
    case 2:
      return feet > 0 && inches > 0 && inches < 12 ? `${feet} ft ${inches} in` : `${whole} cm`;
    case 3:
      return vague ? `about ${metres.toFixed(1)} m` : `${metres.toFixed(2)} m`;
    case 4:
      return `${metres.toFixed(3)} m ± ${chance.between(4, 40)} mm`;
    case 5:
      return `${metres.toFixed(2)} ± 0.0${chance.between(1, 6)} m (2 s)`;
    default:
      return `${metres.toFixed(2)} ± 0.0${chance.between(1, 4)} m`;
  }
}

/** Name, what is usual in metres, and how much it varies: gaps about a whole number of ells, other things by a share. */
const dimensions = [
  ["gap", 0.552, 0.02],
  ["gap", 0.552, 0.02],
  ["gap", 0.552, 0.02],
  ["depth", 0.8, 0.25],
  ["gap", 0.552, 0.02],
  ["diameter", 0.6, 0.2],
  ["gap", 0.552, 0.02],
] as const;

/** What was measured, each in its source's file; those an argument can lean on have an id. */
export function measure(matter: Matter): readonly Evidence[] {
  const { site, sources, sheets, chance } = matter;
  const found: Evidence[] = [];
  const measured = new Map<string, number>();
  for (let n = 0; n < quota(matter, "measurements"); n++) {
    const since = chance.between(0, sources.length - 1);
    const source = sources[since] ?? chance.pick(sources);
    const [dimension, typical, spread] = dimensions[n % dimensions.length] ?? dimensions[0];
    const times = dimension === "gap" ? chance.between(2, 5) : 1;
    const before = measured.get(dimension) ?? 0;
    measured.set(dimension, before + 1);
    const metres = Math.max(
      0.12,
      typical * times + spread * chance.normal() * (dimension === "gap" ? 1 : typical),
    );
    const value = lengthText(metres, chance, dimension !== "gap");
    const bound = value.startsWith("≥");
    const named = !bound && chance.of(0.5);
    const id = `${site.id}-measured-${n + 1}`;
    sheets.add(
      source.file,
      "measurements",
      {
        id: named ? id : undefined,
        of: site.parts[before % site.parts.length] ?? site.id,
        dimension,
        value,
        state: bound ? "preserved" : dimension !== "gap" && chance.of(0.15) ? "reconstructed" : undefined,
        basis: chance.pick(["autopsy", "autopsy", "drawing", "report"]),
        instrument: chance.of(0.2) ? chance.pick(["tape", "total station", "callipers"]) : undefined,
        year: source.year - chance.between(0, 1),
        from: `${source.key} table ${chance.between(1, 6)}`,
      },
      source.key,
    );
    if (named) found.push({ id, since });
  }
  return found;
}

/** What lies over what, or was dug at one time. */
export function relate(matter: Matter): readonly Evidence[] {
  const { site, sources, sheets, chance } = matter;
  return Array.from({ length: quota(matter, "relations") }, (_, n): Evidence => {
    const since = chance.between(0, sources.length - 1);
    const source = sources[since] ?? chance.pick(sources);
    const at = chance.between(0, site.parts.length - 2);
    const [one, other] = [site.parts[at] ?? site.id, site.parts[at + 1] ?? site.id];
    const id = `${site.id}-order-${n + 1}`;
    const order = chance.of(0.7) ? { earlier: one, later: other } : { "same-time": [one, other] };
    const because = "The fill of the one runs into the other without a line.";
    sheets.add(source.file, "relations", { id, ...order, because, from: `${source.key} p. 7` }, source.key);
    return { id, since };
  });
}

/** Numbers to compute: a unit searched for, a unit given, or one thing's measures against another's; with few draws. */
export function derivations(matter: Matter, claims: readonly string[]): readonly Evidence[] {
  const { site, sheets, chance, place } = matter;
  return Array.from({ length: quota(matter, "derivations") }, (_, n): Evidence => {
    const id = `${site.id}-number-${n + 1}`;
    const values = { of: site.id, dimension: "gap" };
    const kind = n % 2 === 1 || (n === 0 && place % 3 === 2) ? "given" : "search";
    sheets.add(`questions/${site.id}.yaml`, "derivations", {
      id,
      plugin: "unit-fit",
      inputs: { values },
      parameters:
        kind === "given" && place > 0
          ? { unit: "zenni-ell" }
          : { low: "0.45 m", high: "1.20 m", draws: "200" },
      "bears-on": [{ claim: chance.pick(claims), supports: { p: "< 0.05" }, disputes: { p: "> 0.5" } }],
      text:
        kind === "given" ? "The gaps against the ell of 1904." : "The gaps, searched for any unit at all.",
    });
    return { id, since: 0 };
  });
}
