import type { ListName } from "../../../read/grammar/field.ts";
import { kindOf, listNames } from "../../../read/grammar/kinds.ts";

/** What a record can be in an argument. */
export interface Roles {
  readonly premise: boolean;
  readonly conclusion: boolean;
  readonly attacked: boolean;
}

const none: Roles = { premise: false, conclusion: false, attacked: false };

/** The lists to which a field of an argument may lead. */
export function listsFor(field: "because" | "therefore" | "against"): readonly ListName[] {
  const found = kindOf("arguments").fields[field];
  const to: readonly string[] = found?.type === "ref" || found?.type === "refs" ? found.to : [];
  return listNames.filter((list) => to.includes(list));
}

/** What records of a list can be in an argument; nothing for a list that no argument names. */
export function rolesOf(list: ListName | null): Roles {
  if (list === null) return none;
  return {
    premise: listsFor("because").includes(list),
    conclusion: listsFor("therefore").includes(list),
    attacked: listsFor("against").includes(list),
  };
}

/** The list of a record by what one of its kind is called. */
export function listCalled(singular: string): ListName | null {
  return listNames.find((list) => kindOf(list).singular === singular) ?? null;
}
