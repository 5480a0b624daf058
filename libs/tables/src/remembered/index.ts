/**
 * A pure function that keeps its last answers, since sheets say the same few words over and over; what was asked first goes first.
 *
 * @param most answers kept
 * @example remembered((text: string) => text.length, 100)("tread") // 5
 */
export const remembered = <Answer>(
  answer: (text: string) => Answer,
  most: number,
): ((text: string) => Answer) => {
  const known = new Map<string, Answer>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const made = answer(text);
    if (known.size >= most)
      for (const key of known.keys()) {
        known.delete(key);
        break;
      }
    known.set(text, made);
    return made;
  };
};
