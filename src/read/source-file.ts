/** A file of the corpus as the host found it; `problem` says why its text could not be had. */
export interface SourceFile {
  /** Path below the corpus's folder, parted by `/`. */
  readonly path: string;
  readonly text: string;
  readonly problem?: string;
}

/** Largest YAML file read, in bytes. */
export const largestYaml = 8 * 1024 * 1024;

/** Largest bibliography or table read, in bytes. */
export const largestTable = 64 * 1024 * 1024;
