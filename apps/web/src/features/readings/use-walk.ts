import { type KeyboardEvent, useState } from "react";
import type { Proposal } from "./review";
import { isDecided } from "./standing";
import type { Reviewing } from "./use-review";

const focusOn = (key: string): void => {
  requestAnimationFrame(() => {
    const line = document.getElementById(`proposal-${key}`);
    line?.focus({ preventScroll: true });
    line?.scrollIntoView({ block: "center" });
  });
};

/** Which of the proposals in sight is looked at, and how one moves on. */
const useSelected = (shown: readonly Proposal[], reviewing: Reviewing) => {
  const [chosen, setChosen] = useState<string>();
  const selected = shown.some(({ key }) => key === chosen) ? chosen : shown[0]?.key;
  const go = (key: string | undefined): void => {
    if (key === undefined) return;
    setChosen(key);
    focusOn(key);
  };
  const at = (key: string | undefined): number => shown.findIndex((one) => one.key === key);
  const step = (by: number): void => go(shown[at(selected) + by]?.key);
  /** The next one after it that is not done with. */
  const done = (key: string): void => {
    const isLeft = (one: Proposal): boolean => one.key !== key && !isDecided(reviewing.standing(one));
    go((shown.slice(at(key) + 1).find(isLeft) ?? shown.find(isLeft))?.key ?? key);
  };
  return { selected, select: setChosen, go, step, done };
};

type Walked = ReturnType<typeof useSelected> & { readonly edit: (key: string | undefined) => void };

/** What each key does with the line that has the focus. */
const keysOf = (
  { step, done, edit }: Walked,
  reviewing: Reviewing,
): Readonly<Record<string, (one: Proposal) => void>> => ({
  ArrowDown: () => step(1),
  ArrowUp: () => step(-1),
  a: (one) => {
    const standing = reviewing.standing(one);
    if (standing !== "open" && standing !== "other") return;
    done(one.key);
    void reviewing.accept([one]);
  },
  c: ({ key }) => edit(key),
  r: (one) => {
    reviewing.reject(one);
    done(one.key);
  },
  u: (one) => void reviewing.takeBack(one),
});

/** Moving about among the proposals in sight, and the keys that do so. */
export const useWalk = (shown: readonly Proposal[], reviewing: Reviewing) => {
  const walked = useSelected(shown, reviewing);
  const [editing, edit] = useState<string>();
  const keys = keysOf({ ...walked, edit }, reviewing);
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey) return;
    const one = shown.find((each) => each.key === walked.selected);
    const deed = keys[key.length === 1 ? key.toLowerCase() : key];
    if (one === undefined || deed === undefined || editing !== undefined) return;
    event.preventDefault();
    deed(one);
  };
  return { ...walked, editing, edit, onKeyDown };
};
