/** How often a model is built again while numbers come, one by one. */
export interface Pace {
  /** Whether so many that came are enough to build with. */
  readonly isDue: (taken: number) => boolean;
  readonly build: (work: () => void) => void;
  /** For another model it begins anew. */
  readonly renew: () => void;
}

/** Building takes no more than so large a part of the time, one in so many: pages are not answered meanwhile. */
const share = 10;

/** First after one number, then after two, four and so on, since building for every one of hundreds costs more than computing them. */
export function paceBy(now: () => number): Pace {
  let patience = 1;
  let notBefore = -Infinity;
  return {
    isDue: (taken) => taken >= patience && now() >= notBefore,
    build: (work) => {
      const begun = now();
      work();
      const end = now();
      patience *= 2;
      notBefore = end + (share - 1) * (end - begun);
    },
    renew: () => {
      patience = 1;
      notBefore = -Infinity;
    },
  };
}
