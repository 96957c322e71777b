import fc from "fast-check";
import { expect, test } from "vitest";
import { paceBy } from "../../../src/app/worker/models/pace.ts";

test("while numbers come building takes a tenth of the time at most, and is done for twice as many each time", () => {
  const ms = fc.integer({ min: 1, max: 5000 });
  fc.assert(
    fc.property(ms, fc.array(ms, { minLength: 20, maxLength: 60 }), (cost, gaps) => {
      let clock = 0;
      let building = 0;
      let taken = 0;
      const counts: number[] = [];
      const pace = paceBy(() => clock);
      for (const gap of gaps) {
        clock += gap;
        taken += 1;
        if (!pace.isDue(taken)) continue;
        expect(10 * building).toBeLessThanOrEqual(clock);
        pace.build(() => (clock += cost));
        building += cost;
        counts.push(taken);
        taken = 0;
      }
      expect(counts[0]).toBe(1);
      expect(counts.every((count, at) => count >= 2 ** at)).toBe(true);
      pace.renew();
      expect(pace.isDue(1)).toBe(true);
    }),
    { numRuns: 60, seed: 3 },
  );
});
