function letterPairs(text: string): Map<string, number> {
  const pairs = new Map<string, number>();
  for (let index = 0; index + 1 < text.length; index += 1) {
    const pair = text.slice(index, index + 2);
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
  }
  return pairs;
}

/** Dice's coefficient of the letter pairs of two words: 1 the same, 0 nothing shared. */
function likeness(a: string, b: string): number {
  const pairs = letterPairs(a);
  let shared = 0;
  for (const [pair, count] of letterPairs(b)) shared += Math.min(count, pairs.get(pair) ?? 0);
  return (2 * shared) / Math.max(a.length + b.length - 2, 1);
}

/** The name most like the one written, if any shares at least half its letter pairs; the first of equals. */
export function closest(written: string, names: Iterable<string>): string | undefined {
  let best: string | undefined;
  let most = 0.5;
  for (const name of names) {
    const like = likeness(written, name);
    if (like > most || (like === most && best === undefined)) {
      best = name;
      most = like;
    }
  }
  return best;
}
