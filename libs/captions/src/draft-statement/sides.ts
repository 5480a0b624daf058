import type { SaidSides } from "../places-of/index.ts";

/** What two say together; of a number the later. */
export const merged = (a: SaidSides, b: SaidSides): SaidSides => ({
  adds: [...a.adds, ...b.adds],
  all: a.all || b.all,
  other: a.other || b.other,
  spare: a.spare || b.spare,
  ...(a.seat === true || b.seat === true ? { seat: true } : {}),
  index: b.index ?? a.index,
});

/** A new left replaces a right, a new front a rear; what the new one says nothing of stays. */
export const replaced = (a: SaidSides, b: SaidSides): SaidSides => {
  const pairs = [
    ["left", "right", "driver", "passenger"],
    ["front", "rear", "driver", "passenger"],
    ["upper", "lower"],
    ["inner", "outer"],
  ];
  const kept = a.adds.filter(
    (add) => !pairs.some((pair) => pair.includes(add) && b.adds.some((other) => pair.includes(other))),
  );
  return {
    adds: b.all || b.other ? b.adds : [...kept, ...b.adds],
    all: b.all,
    other: b.other,
    spare: b.spare,
    ...(b.seat === undefined ? {} : { seat: b.seat }),
    ...(b.one === true ? { one: true } : {}),
    index: b.index,
  };
};
