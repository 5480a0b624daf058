import type { Atom, Entry } from "@evenhand/shared/comparison";

const ofAtom = (atom: Atom): string => {
  switch (atom.of) {
    case "answer":
      return "answer";
    case "fault":
      return `fault:${atom.kind}:${atom.spot ?? ""}`;
    case "denial":
      return `denial:${atom.kind}`;
  }
};

/**
 * What a line of a comparison is about, told by place and atom: the same for the same statement in every comparison it stands
 * in, whatever the line's index there.
 *
 * @example lineKey({ item: "electrics.horn", position: "", atom: { of: "answer" } }) // "electrics.horn||answer"
 */
export const lineKey = ({ item, position, atom }: Pick<Entry, "item" | "position" | "atom">): string =>
  `${item}|${position}|${ofAtom(atom)}`;
