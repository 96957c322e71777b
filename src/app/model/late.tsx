import type { ComponentType } from "react";
import type { PageName } from "../worker/pages.ts";

/** How to fetch the code of each page that has it fetched. */
const fetches = new Map<PageName, () => Promise<void> | null>();

/** A page whose code is fetched when it is first asked for; it shows nothing until `codeOf` is through. */
export function late<Props extends object>(
  page: PageName,
  fetch: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let Shown: ComponentType<Props> | null = null;
  let coming: Promise<void> | null = null;
  const take = async (): Promise<void> => {
    try {
      Shown = await fetch();
    } finally {
      // Asked for once more, it is tried once more.
      coming = null;
    }
  };
  fetches.set(page, () => (Shown === null ? (coming ??= take()) : null));
  return (props: Props) => Shown && <Shown {...props} />;
}

/** Fetches the code of a page; null where it is there. */
export const codeOf = (page: PageName): Promise<void> | null => fetches.get(page)?.() ?? null;
