/** More positions than a sheet has; who met more starts over rather than grow. */
const MOST = 4096;

/**
 * A function of a position alone, worked out once for each: positions are the sheet's, and the same few are asked for again and again.
 *
 * @example ofPosition((position) => position.length)("left-front") // 10
 */
export const ofPosition = <Made>(make: (position: string) => Made): ((position: string) => Made) => {
  const known = new Map<string, Made>();
  return (position) => {
    const kept = known.get(position);
    if (kept !== undefined) return kept;
    if (known.size >= MOST) known.clear();
    const made = make(position);
    known.set(position, made);
    return made;
  };
};

/**
 * A position as it is said: its words apart.
 *
 * @example saidPosition("left-front-door") // "left front door"
 */
export const saidPosition = ofPosition((position) => position.replaceAll("-", " "));
