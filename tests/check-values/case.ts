/** A computation under the name the case files know it by; a refusal is a result with an `error` field. */
export type Methods = Readonly<Record<string, (input: unknown) => unknown>>;

/** A JSON object, as it comes from a case file. */
export type Fields = Readonly<Record<string, unknown>>;

/** One check: what to compute, what is expected, how near it must come. */
export type Case = {
  readonly id: string;
  readonly method: string;
  readonly input: unknown;
  readonly expected: unknown;
  readonly tolerance: Fields;
  /** Its lists are sets: their order says nothing. */
  readonly unordered?: boolean;
};

/** A file that holds no cases, or none that can be read; the message says what was expected. */
export class CaseFileError extends Error {}

/** Whether a JSON value is an object. */
export function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
