import { useState } from "react";
import type { Step } from "../../../../host/desk/state.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { against, send } from "../../../model/corpus.ts";
import { changesWords as words } from "../../../words/desk/changes.ts";
import type { ChangesPage } from "./compared.ts";
import { useStep, useSteps } from "./handing.ts";
import { moment } from "./moment.ts";
import { ChangesTold } from "./told.tsx";

interface Props {
  readonly page: ChangesPage;
  readonly address: ReturnType<typeof useAddress>;
}

/** As many steps are read at a glance. */
const few = 40;

/** The steps made at the desk, the newest first; the one that is looked at is told by record. */
export function Steps({ page, address }: Props) {
  const steps = useSteps(page.reading);
  if (steps === null) return <p className="quiet apart">{words.comparing}</p>;
  if (steps.length === 0) return <p className="apart">{words.noSteps}</p>;
  const open = /^step-(\d+)$/u.exec(page.of)?.[1];
  const one = (step: Step) => (
    <StepMade
      key={step.n}
      step={step}
      steps={steps}
      page={open === String(step.n) ? page : null}
      address={address}
    />
  );
  const older = steps.slice(few);
  return (
    <>
      <ol className="steps-made">{steps.slice(0, few).map(one)}</ol>
      {older.length > 0 && (
        <details open={older.some((step) => open === String(step.n))}>
          <summary>{words.older(older.length)}</summary>
          <ol className="steps-made">{older.map(one)}</ol>
        </details>
      )}
    </>
  );
}

function StepMade({
  step,
  steps,
  page,
  address,
}: {
  readonly step: Step;
  readonly steps: readonly Step[];
  readonly page: ChangesPage | null;
  readonly address: Props["address"];
}) {
  return (
    <li>
      <p>
        <time dateTime={step.when}>{moment(step.when)}</time>
        <button
          type="button"
          className="name"
          aria-expanded={page !== null}
          onClick={() => address.toLook({ step: page ? null : String(step.n) }, "replace")}
        >
          <span dir="auto">{words.step(step.kind, step.step)}</span>
        </button>
        <span className="file quiet">{words.inFiles(step.files.map((one) => one.file))}</span>
      </p>
      {page && <StepTold step={step} steps={steps} page={page} asOf={address.asOf} />}
    </li>
  );
}

function StepTold({
  step,
  steps,
  page,
  asOf,
}: {
  readonly step: Step;
  readonly steps: readonly Step[];
  readonly page: ChangesPage;
  readonly asOf: number | null;
}) {
  const lost = useStep(step, steps, page.key);
  const { told, pending } = page;
  return (
    <div className="step-told">
      {lost !== null && <p className="quiet">{words.notKept}</p>}
      {lost === null && told === null && <p className="quiet">{words.comparing}</p>}
      {told === "unreadable" && <p>{words.unreadable}</p>}
      {told !== null && told !== "unreadable" && <ChangesTold told={told} pending={pending} asOf={asOf} />}
      <GoBack step={step} isLast={step.n === steps[0]?.n} />
    </div>
  );
}

/** The way back to how the files were after a step, asked for once in its place. */
function GoBack({ step, isLast }: { readonly step: Step; readonly isLast: boolean }) {
  const { state } = useDesk();
  const [asking, setAsking] = useState(false);
  const [said, setSaid] = useState<{ readonly text: string; readonly trouble: boolean } | null>(null);
  if (state.readOnly !== null) return null;
  if (isLast) return <p className="quiet">{words.now}</p>;
  const back = async (): Promise<void> => {
    setAsking(false);
    const { status, text } = await send("back", {
      n: step.n,
      step: words.backTo(words.step(step.kind, step.step)),
    });
    setSaid(
      status === 200 ? { text: words.wentBack, trouble: false } : { text: against(text), trouble: true },
    );
  };
  return (
    <div className="going-back">
      {asking ? (
        <>
          <p>{words.ask}</p>
          <p>
            <button type="button" className="main" onClick={() => void back()}>
              {words.sure}
            </button>{" "}
            <button type="button" onClick={() => setAsking(false)}>
              {words.keep}
            </button>
          </p>
        </>
      ) : (
        <button
          type="button"
          onClick={() => {
            setSaid(null);
            setAsking(true);
          }}
        >
          {words.back}
        </button>
      )}
      <p role={said?.trouble ? "alert" : "status"}>{said?.text}</p>
    </div>
  );
}
