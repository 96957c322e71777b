import type { Bearing } from "../../../derive/bearing.ts";
import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Plugin } from "../../../plugin.ts";
import type { NumberPage } from "../../numbers/number.ts";
import type { Understood } from "./settings.ts";
import type { Trial } from "./trial.ts";
import { limitUnderstood } from "./typing.ts";
import type { Typing } from "./typing.ts";

/** What the draft's numbers say of one claim now, and how its limits are understood. */
export interface BearingField {
  readonly claim: Id;
  readonly says: Bearing | null;
  readonly standing: Standing | null;
  readonly largeP: boolean;
  readonly trouble: Text | null;
}

/** The limits as they are understood, by the number they are asked of and the text: while one is typed, that one too. */
export function limitTyped(trial: Trial, plugin: Plugin, typing: Typing | null): Understood | null {
  const name = typing?.at.startsWith("limit.") === true ? typing.at.slice("limit.".length) : null;
  if (name === null || typing === null) return null;
  const first = plugin.inputs.flatMap((input) => trial.derived?.run?.inputs[input.name] ?? [])[0];
  return limitUnderstood(trial.graph, plugin, name, typing.text, first?.quantity.kind ?? null);
}

/** What the number says of each claim that it is to bear on, in the order of the draft's entries that name one. */
export function bearingFields(
  { record, judgement }: Trial,
  shown: NumberPage | null,
): readonly BearingField[] {
  return (record?.values["bears-on"] ?? []).map(({ claim }) => {
    const line = shown?.bearings.filter((one) => one.claim === claim)[0];
    return {
      claim,
      says: line?.says ?? null,
      standing: judgement.standings.get(claim) ?? null,
      largeP: line?.largeP ?? false,
      trouble: line?.trouble ?? null,
    };
  });
}
