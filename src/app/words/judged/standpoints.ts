import { arabicStandpoints } from "../arabic/judged/standpoints.ts";
import { told } from "../reader/told.ts";

/** The words of the page of coherent standpoints. */
export const standpointWords = told(
  {
    standpoints: "Standpoints",
    title: "Coherent standpoints",
    what: "A coherent standpoint decides as much of what is open as goes together without contradiction. Take one alternative from each part below: any of them goes with any of the others.",
    part: (n: number) => `Part ${n}`,
    and: "and",
    moreContradictions: (n: number) =>
      n === 1
        ? "and one more contradiction, which it cannot be parted from"
        : `and ${n} more contradictions, which it cannot be parted from`,
    bearsOn: "Bears on",
    claim: "Claim",
    alternative: (n: number) => `Alternative ${n}`,
    throughout: "In every standpoint",
    alternatives: (from: number, to: number) =>
      from === to ? `Alternative ${from}` : `Alternatives ${from} to ${to}`,
    evidence: "Evidence",
    arguments: "Arguments",
    below: (n: number) => (n === 1 ? "One more thing that goes with it" : `${n} more things that go with it`),
    fits: "Fits wholly",
    fitsNearly: "Fits all but one position",
    nobody: "nobody",
    alike: (n: number) => `${n} ways look so; what tells them apart is withheld.`,
    more: (n: number) => (n === 1 ? "One more alternative" : `${n} more alternatives`),
    someFit: "Scholars whom one of them fits",
    unknown: "Not known, for it would cost too much to find out:",
    joint: "What hangs on several parts",
    holds: "In which standpoints",
    hangsOn: "Hangs on",
    parts: (ns: readonly number[]) =>
      ns.length === 2
        ? `parts ${ns.join(" and ")}`
        : `parts ${ns.slice(0, -1).join(", ")} and ${ns.at(-1) ?? ""}`,
    settled: "The same in every standpoint",
    scholars: "Scholars whom a whole standpoint fits",
    scholarsNone: "No standpoint fits all latest positions of a scholar, or all but one.",
    positions: (n: number) => (n === 1 ? "one position" : `${n} positions`),
  },
  arabicStandpoints,
);
