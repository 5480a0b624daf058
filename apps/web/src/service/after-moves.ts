import { isMoved } from "./refusal";

/** As often as another change of the same thing may come between. */
const tries = 4;

/** Does something anew, from what then stands, where somebody came between. Any other refusal is thrown, and the last one. */
export const afterMoves = async <Done>(work: () => Promise<Done>): Promise<Done> => {
  for (let left = tries; ; left -= 1) {
    try {
      return await work();
    } catch (error) {
      if (!isMoved(error) || left === 1) throw error;
    }
  }
};
