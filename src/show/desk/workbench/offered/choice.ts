import type { Text } from "../../../../base/text/said/said.ts";

/** Something that can be chosen: what is written, and what it is called. */
export interface Choice {
  readonly value: string;
  readonly text: Text;
}
