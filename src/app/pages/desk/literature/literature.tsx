import { useLocation } from "wouter";
import type { LiteraturePage as Page } from "../../../../show/desk/literature/page.ts";
import { underLens } from "../../../address.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { Looks } from "../../../parts/places/looks.tsx";
import { literatureWords as words } from "../../../words/reading/literature.ts";
import { today } from "./choosing.ts";
import { ReadingList } from "./reading-list.tsx";
import { SearchLog } from "./search-log.tsx";

/** The room of the literature: the reading list, or the log of the searches. */
export function LiteraturePage({
  page,
  address,
}: {
  readonly page: Page;
  readonly address: ReturnType<typeof useAddress>;
}) {
  const { asOf, query } = address;
  const isLog = query.get("look") === "searches";
  const canSave = useDesk().state.readOnly === null;
  const [, go] = useLocation();
  const fresh = underLens(`/new/searches?when=${today()}`, asOf);
  useActions(words.log, canSave ? [{ name: words.logOne, key: "l", run: () => go(fresh) }] : []);
  return (
    <>
      <h1>{words.title}</h1>
      <Looks
        label={words.looks}
        asOf={asOf}
        looks={[
          ["/literature", words.list, !isLog],
          ["/literature?look=searches", words.log, isLog],
        ]}
      />
      {isLog ? (
        <SearchLog log={page.log} fresh={canSave ? fresh : null} asOf={asOf} />
      ) : (
        <ReadingList sources={page.sources} address={address} />
      )}
    </>
  );
}
