/** Between these marks the README has the table of figures. */
export const marks: readonly string[];

/** The rows of a table in Markdown, without its head. */
export function rowsIn(text: string): readonly (readonly string[])[];

/** Whether a row has something to reach. */
export function hasGoal(row: readonly string[]): boolean;
