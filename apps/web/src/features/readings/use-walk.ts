import { type KeyboardEvent, useState } from "react";
import type { Proposal } from "./review";
import type { Reviewing } from "./use-review";

const focusOn = (key: string): void => {
  requestAnimationFrame(() => {
    const line = document.getElementById(`proposal-${key}`);
    line?.focus({ preventScroll: true });
    line?.scrollIntoView({ block: "center" });
  });
};

/** Moving about among the proposals in sight, and the keys that do so. */
export const useWalk = (shown: readonly Proposal[], reviewing: Reviewing) => {
  const [chosen, setChosen] = useState<string>();
  const [editing, setEditing] = useState<string>();
  const selected = shown.some(({ key }) => key === chosen) ? chosen : shown[0]?.key;
  const go = (key: string | undefined): void => {
    if (key === undefined) return;
    setChosen(key);
    focusOn(key);
  };
  const step = (by: number): void => {
    const at = shown.findIndex(({ key }) => key === selected);
    go(shown[at + by]?.key);
  };
  /** The next one after it that is not done with. */
  const done = (key: string): void => {
    const at = shown.findIndex((one) => one.key === key);
    const isLeft = (one: Proposal): boolean =>
      one.key !== key && !["accepted", "rejected"].includes(reviewing.standing(one));
    go((shown.slice(at + 1).find(isLeft) ?? shown.find(isLeft))?.key ?? key);
  };
  const keys: Readonly<Record<string, (one: Proposal) => void>> = {
    ArrowDown: () => step(1),
    ArrowUp: () => step(-1),
    a: (one) => {
      const standing = reviewing.standing(one);
      if (standing !== "open" && standing !== "other") return;
      done(one.key);
      void reviewing.accept([one]);
    },
    c: ({ key }) => setEditing(key),
    r: (one) => {
      reviewing.reject(one);
      done(one.key);
    },
    u: (one) => void reviewing.takeBack(one),
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey) return;
    const one = shown.find((each) => each.key === selected);
    const deed = keys[key.length === 1 ? key.toLowerCase() : key];
    if (one === undefined || deed === undefined || editing !== undefined) return;
    event.preventDefault();
    deed(one);
  };
  return { selected, editing, go, select: setChosen, edit: setEditing, done, onKeyDown };
};
