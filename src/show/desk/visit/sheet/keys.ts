import type { Id } from "../../../../base/finding.ts";

/** What a row for a dimension is about. */
export interface Measurable {
  readonly of: Id;
  readonly dimension: string;
  /** The landmarks that tell it from others of its name; empty where there are none. */
  readonly between: string;
}

/** What a row for a feature is about. */
export interface Visible {
  readonly of: readonly Id[];
  readonly feature: string;
}

/** The key of a row for a dimension: what it is about can be read from it, whatever the sheet has become since. */
export function measureKey({ of, dimension, between }: Measurable): string {
  return JSON.stringify([of, dimension, between]);
}

/** The key of a row for a feature. */
export function featureKey({ of, feature }: Visible): string {
  return JSON.stringify([of, feature]);
}

/** The key of a picture that is to be taken of a thing. */
export function pictureKey(of: Id, what: string): string {
  return JSON.stringify([of, what]);
}

/** What a row for a dimension is about; null for another key. */
export function measurableIn(key: string): Measurable | null {
  const [of, dimension, between, ...more] = listIn(key);
  return typeof of === "string" && typeof dimension === "string" && typeof between === "string"
    ? more.length === 0 && dimension !== ""
      ? { of, dimension, between }
      : null
    : null;
}

/** What a row for a feature is about; null for another key. */
export function visibleIn(key: string): Visible | null {
  const [of, feature] = listIn(key);
  return Array.isArray(of) && of.every((id) => typeof id === "string") && typeof feature === "string"
    ? { of, feature }
    : null;
}

/** The thing that a picture is to be taken of; null for another key. */
export function picturedIn(key: string): Id | null {
  const [of] = listIn(key);
  return typeof of === "string" ? of : null;
}

function listIn(key: string): readonly unknown[] {
  try {
    const list: unknown = JSON.parse(key);
    if (!Array.isArray(list)) return [];
    // Control signs, which no row of ours has, mean something inside the program.
    const texts = list.flat().filter((one) => typeof one === "string");
    return texts.some((one) => /\p{Cc}/u.test(one)) ? [] : list;
  } catch {
    return [];
  }
}
