import { useEffect, useState } from "react";
import { mapWords } from "../words/shown/map.ts";

/** How long each year is shown, in ms. */
const pause = 1800;

interface Props {
  readonly years: readonly number[];
  readonly asOf: number | null;
  readonly toYear: (year: number | null) => void;
}

/** Steps through the years by itself, stoppable; where motion is not wanted, one press is one step. */
export function Replay({ years, asOf, toYear }: Props) {
  const [step, setStep] = useState<number | null>(null);
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  useEffect(() => {
    if (step === null) return undefined;
    const timer = setTimeout(() => {
      const year = years[step + 1];
      if (year === undefined) return setStep(null);
      toYear(year);
      setStep(step + 1);
    }, pause);
    return () => clearTimeout(timer);
  }, [step, years, toYear]);

  const first = years[0];
  if (first === undefined || years.length < 2) return null;
  if (still) {
    const next = asOf === null ? first : (years.find((year) => year > asOf) ?? first);
    return (
      <button type="button" onClick={() => toYear(next)}>
        {mapWords.nextYear}
      </button>
    );
  }
  const start = (): void => {
    toYear(first);
    setStep(0);
  };
  return (
    <button type="button" onClick={step === null ? start : () => setStep(null)}>
      {step === null ? mapWords.replay : mapWords.stop}
    </button>
  );
}
