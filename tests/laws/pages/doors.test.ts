import { expect, test } from "vitest";
import { doorTo, leaveAsking } from "../../../src/app/model/door/asking.ts";
import { answerThrough } from "../../../src/app/model/door/serving.ts";

interface Sums {
  readonly add: (of: readonly [number, number]) => number;
  readonly negate: (one: number) => number;
}

const sums: Sums = { add: ([a, b]) => a + b, negate: (one) => -one };

/** A worker that takes the door and answers through it what it can; null stands for no corpus. */
function holderOf(answers: () => Sums | null, ports: MessagePort[]): Worker {
  const postMessage = ({ port }: { readonly port: MessagePort }): void => {
    ports.push(port);
    answerThrough<Sums>(port, answers);
  };
  return { postMessage } as unknown as Worker;
}

test("each question has its own answer, whichever door it goes through", async () => {
  const ports: MessagePort[] = [];
  const [first, second] = [doorTo<Sums>("forms"), doorTo<Sums>("grid")];
  first.open(holderOf(() => sums, ports));
  second.open(holderOf(() => null, ports));
  const answers = [first.ask("add", [1, 2]), second.ask("add", [1, 2]), first.ask("negate", 4)];
  expect(await Promise.all(answers)).toEqual([3, null, -4]);
  for (const port of ports) port.close();
});

test("where the worker failed, nobody waits for ever at any door", async () => {
  const deaf = { postMessage: () => undefined } as unknown as Worker;
  const answers = (["forms", "grid", "import", "arguing"] as const).map((kind) => {
    const door = doorTo<Sums>(kind);
    door.open(deaf);
    return door.ask("negate", 1);
  });
  leaveAsking();
  expect(await Promise.all(answers)).toEqual([null, null, null, null]);
});
