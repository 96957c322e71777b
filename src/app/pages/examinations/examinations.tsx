import { useEffect, useRef } from "react";
import type { ExaminationsPage as Data } from "../../../show/plan/page.ts";
import { rankingRule } from "../../../show/plan/wording.ts";
import type { useAddress } from "../../address.ts";
import { useActions } from "../../parts/actions.tsx";
import { Empty } from "../../parts/empty.tsx";
import { YearRod } from "../../parts/year-rod.tsx";
import { empty } from "../../words/shown/empty.ts";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { Look } from "./look.tsx";
import { Suggested } from "./suggested.tsx";
import { toLook, toNextLook } from "./to-look.tsx";
import { Trips } from "./trips.tsx";
import { SmallestSet, Undecided } from "./undecided.tsx";

interface Props {
  readonly page: Data & {
    readonly progress: { readonly done: number; readonly of: number } | null;
    /** Numbers of the record itself that are computed before anything is planned. */
    readonly waitsFor: number;
  };
  readonly address: ReturnType<typeof useAddress>;
}

/** As many examinations stand open; those after them, and those that decide nothing, are folded to a line. */
const open = 3;

/** What to look at next: what none can decide, each examination with its outcomes, what the record suggests, and the trips. */
export function ExaminationsPage({ page, address }: Props) {
  const { plan, recorded, costsIn } = page;
  const { asOf, query, lens, toYear } = address;
  const at = query.get("at");
  const goTo = (id: string | null): void => address.toLook({ at: id }, "replace");
  useArrivalAt(at, plan !== null);
  useActions(words.examinations, [
    { name: words.next, key: "n", run: () => toNextLook("next") },
    { name: words.before, key: "N", run: () => toNextLook("before") },
  ]);
  const rest = { at, goTo, costsIn, asOf };
  const deciding = plan?.recorded.filter((one) => one.decidesAnswer).length ?? 0;
  const idle = plan?.recorded.filter((one) => one.idle).length ?? 0;
  return (
    <div className="examinations">
      <h1>{words.examinations}</h1>
      {plan && recorded > 0 && <p className="lead">{words.lead(recorded, deciding, idle)}</p>}
      {asOf !== null && <YearRod years={page.years} asOf={asOf} toYear={toYear} />}
      {lens.suppose !== undefined && <p className="quiet">{words.ofTheRecord}</p>}
      <output className="quiet working">{stateOf(page)}</output>
      {recorded === 0 && <Empty {...empty.examinations} make={["examinations"]} />}
      {plan && recorded > 0 && (
        <>
          <Undecided contest={plan.contest} asOf={asOf} />
          <SmallestSet contest={plan.contest} asOf={asOf} />
          <section>
            <h2>{words.recorded}</h2>
            <p className="quiet">{inReadersWords(rankingRule)}</p>
            <ol className="looks-at">
              {plan.recorded.map((line, at) => (
                <Look
                  key={line.id}
                  line={line}
                  place={at + 1}
                  folded={at >= open || line.idle}
                  level={3}
                  why={null}
                  {...rest}
                />
              ))}
            </ol>
          </section>
        </>
      )}
      {plan && (
        <>
          <Suggested kinds={plan.suggested} passedOver={plan.passedOver} {...rest} />
          <Trips trips={plan.trips} asOf={asOf} />
        </>
      )}
    </div>
  );
}

/** What is still to be done, in a sentence; nothing where all is there. */
function stateOf({ progress, waitsFor, plan }: Props["page"]): string {
  if (waitsFor > 0) return words.waitsFor(waitsFor);
  if (progress !== null)
    return progress.of === 0 ? words.working : words.workingOf(progress.done, progress.of);
  return plan && plan.pending > 0 ? words.pending(plan.pending) : "";
}

/** Goes to the examination that the address names, once it is there; whoever comes back is where they were. */
function useArrivalAt(at: string | null, there: boolean): void {
  const gone = useRef<string | null>(null);
  // After the picture: the frame goes to the head of a page that is arrived at.
  useEffect(() => {
    if (at === null || !there || gone.current === at) return;
    gone.current = at;
    const focused = document.activeElement;
    if (focused === document.body || focused?.tagName === "MAIN") toLook(at);
  }, [at, there]);
}
