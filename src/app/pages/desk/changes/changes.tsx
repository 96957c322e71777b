import type { useAddress } from "../../../address.ts";
import { Looks } from "../../../parts/places/looks.tsx";
import { changesWords as words } from "../../../words/desk/changes.ts";
import type { ChangesPage as Data } from "./compared.ts";
import { useCommitted } from "./handing.ts";
import { moment } from "./moment.ts";
import { Steps } from "./steps.tsx";
import { ChangesTold } from "./told.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** What changed: against the last commit, or step by step as it was made here; by record, in the words of the sheets. */
export function ChangesPage({ page, address }: Props) {
  const { asOf } = address;
  const since = page.of === "commit";
  const looks = [
    ["/changes", words.sinceCommit, since],
    ["/changes?look=steps", words.steps, !since],
  ] as const;
  return (
    <>
      <h1>{words.changes}</h1>
      <Looks label={words.looks} looks={looks} asOf={asOf} />
      {since ? <SinceCommit page={page} asOf={asOf} /> : <Steps page={page} address={address} />}
    </>
  );
}

function SinceCommit({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  const { key, reading, told, pending } = page;
  const commit = useCommitted(key, reading);
  if (commit === null) return <p className="quiet apart">{words.looking}</p>;
  if (typeof commit === "string")
    return (
      <p className="apart">
        {words.noCommit[commit]} {words.instead}
      </p>
    );
  const ready = told !== null && key === commit.hash;
  return (
    <>
      <p className="lead apart">
        <bdi>{words.commit(commit.subject, moment(commit.when))}</bdi>
      </p>
      {!ready && <p className="quiet apart">{words.comparing}</p>}
      {ready && told === "unreadable" && <p className="apart">{words.unreadable}</p>}
      {ready && told !== "unreadable" && <ChangesTold told={told} pending={pending} asOf={asOf} />}
    </>
  );
}
