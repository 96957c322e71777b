import type { ExplainedBlock, ExplainedRole } from "../../show/pages/explained.ts";

/** Words of what bears out a standing, on a sheet. */
export const explainedWords = {
  titles: {
    support: "The smallest support",
    failed: "Attacks on that, which fail",
    attack: "The attack that works",
    core: "The contradiction it hangs on",
    settlers: "What would settle it",
    lacks: "What is missing",
  } satisfies Readonly<Record<ExplainedBlock["kind"], string>>,
  roles: {
    for: "argument for it",
    from: "from",
    used: "computed on",
    against: "against it",
    answered: "an objection that fails",
    member: null,
    settler: null,
    lack: null,
  } satisfies Readonly<Record<ExplainedRole, string | null>>,
  all: (n: number) => `All ${n} lines`,
} as const;
