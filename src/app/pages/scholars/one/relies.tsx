import type { Looked, Measured } from "../../../../show/scholars/looked.ts";
import type { Named } from "../../../../show/scholars/named.ts";
import type { Step } from "../../../../show/scholars/reliance.ts";
import type { Unanswered } from "../../../../show/scholars/scholar.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { nearnessWords, scholarWords as words } from "../../../words/shown/scholars.ts";
import { marks } from "../../../words/reader/marks.ts";
import { yearIn } from "../../../words/index.ts";

interface Year {
  readonly asOf: number | null;
}

/** Each argument: for or against what, from what, and what it comes down to. */
export function Steps({ steps, asOf }: Year & { readonly steps: readonly Step[] }) {
  return (
    <ul className="steps">
      {steps.map((step) => (
        <li key={step.argument.id}>
          <span className="how figure">{step.year === null ? "" : yearIn(step.year)}</span>
          <div>
            <p className="sentence">
              <RecordLink id={step.argument.id} text={step.argument.text} asOf={asOf} />
            </p>
            <Under head={words.directions[step.direction]} names={step.targets} asOf={asOf} />
            <Under head={words.from} names={step.premises} asOf={asOf} />
            <Under
              head={words.comesDownTo}
              names={step.evidence}
              nothing={step.bare ? words.noEvidence : null}
              asOf={asOf}
            />
            <Under head={words.on} names={step.things} asOf={asOf} inLine />
          </div>
          {step.argument.standing !== null && <StandingMark standing={step.argument.standing} />}
        </li>
      ))}
    </ul>
  );
}

const few = 4;

/** Names after a word; of many the first few, the rest folded up. */
function Under({
  head,
  names,
  nothing = null,
  inLine = false,
  asOf,
}: Year & {
  readonly head: string;
  readonly names: readonly Named[];
  readonly nothing?: string | null;
  readonly inLine?: boolean;
}) {
  if (names.length === 0 && nothing === null) return null;
  const [shown, rest] = names.length <= few + 1 ? [names, []] : [names.slice(0, few), names.slice(few)];
  return (
    <div className="under">
      <span className="how">{head}</span>
      <div>
        {names.length === 0 && <span className="quiet">{nothing}</span>}
        <Names names={shown} asOf={asOf} inLine={inLine} />
        {rest.length > 0 && (
          <details>
            <summary className="quiet">{words.more(rest.length)}</summary>
            <Names names={rest} asOf={asOf} inLine={inLine} />
          </details>
        )}
      </div>
    </div>
  );
}

function Names({
  names,
  asOf,
  inLine = false,
}: Year & { readonly names: readonly Named[]; readonly inLine?: boolean }) {
  return (
    <ul className={inLine ? "in-line" : undefined}>
      {names.map((one) => (
        <li key={one.id}>
          {one.standing !== null && <StandingMark standing={one.standing} bare />}
          <RecordLink id={one.id} text={one.text} asOf={asOf} />
        </li>
      ))}
    </ul>
  );
}

/** What somebody reports of things, the nearest first. */
export function LookedAt({ looked, asOf }: Year & { readonly looked: readonly Looked[] }) {
  return (
    <ul className="steps plain">
      {looked.map((one) => (
        <li key={one.nearness}>
          <span className="how">{nearnessWords[one.nearness]}</span>
          <div className="looked">
            <Names names={one.seen} asOf={asOf} />
            <ul>
              {one.measured.map((size) => (
                <li key={size.dimension}>
                  <Size size={size} asOf={asOf} />
                </li>
              ))}
            </ul>
          </div>
        </li>
      ))}
    </ul>
  );
}

function Size({ size, asOf }: Year & { readonly size: Measured }) {
  return (
    <>
      <bdi>{size.dimension}</bdi>
      {marks.comma}
      {size.only === null ? (
        words.times(size.count)
      ) : (
        <RecordLink id={size.only.id} text={size.only.value} asOf={asOf} />
      )}
      {size.things.map((thing, place) => (
        <span key={thing.id}>
          {place === 0 ? ` ${words.on} ` : marks.comma}
          <RecordLink id={thing.id} text={thing.text} asOf={asOf} />
        </span>
      ))}
    </>
  );
}

/** Arguments in print against what is held, to which no reply of the scholar's is recorded. */
export function Objections({ list, asOf }: Year & { readonly list: readonly Unanswered[] }) {
  return (
    <ul className="steps">
      {list.map((one) => (
        <li key={one.argument.id}>
          <span className="how figure">{yearIn(one.year)}</span>
          <div>
            <p className="sentence">
              <RecordLink id={one.argument.id} text={one.argument.text} asOf={asOf} />
            </p>
            <Under head={words.is} names={one.against} asOf={asOf} />
            <p className="quiet">
              {one.others.length === 0 ? words.noReply : `${words.onlyOthers} `}
              {one.others.map((other, place) => (
                <span key={other.id}>
                  {place > 0 && marks.comma}
                  <RecordLink id={other.id} text={other.text} asOf={asOf} />
                </span>
              ))}
            </p>
          </div>
          {one.argument.standing !== null && <StandingMark standing={one.argument.standing} />}
        </li>
      ))}
    </ul>
  );
}
