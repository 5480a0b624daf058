import type { AtomJudgment, Say } from "../src/judgment/index.ts";

/** Each atom and what is said of it, as a list. */
export const saidOfAtoms = (compare: (say: Say) => void): AtomJudgment[] => {
  const list: AtomJudgment[] = [];
  compare((atom, said) => list.push({ atom, said }));
  return list;
};
