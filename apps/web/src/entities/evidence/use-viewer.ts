import { useState, type KeyboardEvent } from "react";
import type { ChangeZoom } from "./follow-hand";
import { besideOf, isShown, type Picture } from "./pictures";
import { panBy, STEP, WHOLE, zoomBy, type Zoom } from "./zoom";

/** How far one press of an arrow moves what is seen. */
const stride = 0.12;

const keys: Readonly<Record<string, (now: Zoom) => Zoom>> = {
  "+": (now) => zoomBy(now, STEP),
  "=": (now) => zoomBy(now, STEP),
  "-": (now) => zoomBy(now, 1 / STEP),
  "0": () => WHOLE,
  ArrowUp: (now) => panBy(now, 0, stride / now.scale),
  ArrowDown: (now) => panBy(now, 0, -stride / now.scale),
  ArrowLeft: (now) => panBy(now, stride / now.scale, 0),
  ArrowRight: (now) => panBy(now, -stride / now.scale, 0),
};
const turns: Readonly<Record<string, -1 | 1>> = { ArrowLeft: -1, ArrowRight: 1 };

interface Opened {
  /** In the order one goes through them. */
  readonly pictures: readonly Picture[];
  readonly at: string;
  readonly onGo: (id: string) => void;
}

/** What both sides show of a place: the one gone to, and what of the other side lies beside it. */
const sidesOf = (pictures: readonly Picture[], picture: Picture, chosen: string | undefined) => {
  const others = besideOf(pictures, picture);
  const other = others.find(({ id }) => id === chosen) ?? others[0];
  const pair = other === undefined ? [picture] : [picture, other];
  return pair.toSorted((one) => (one.side === "statement" ? -1 : 1));
};

/** Which of the pictures is gone to, and which stand before and after it. */
const standing = (pictures: readonly Picture[], at: string) => {
  const shown = pictures.filter(isShown);
  const found = shown.findIndex(({ id }) => id === at);
  const nth = Math.max(0, found);
  return { picture: shown[nth], nth, count: shown.length, before: shown[nth - 1], after: shown[nth + 1] };
};

/** The keys look closer and move what is seen; while all of it is seen, they go to the next picture. */
const keysOf =
  (scale: number, turn: (by: -1 | 1) => void, onZoom: ChangeZoom) =>
  (event: KeyboardEvent): void => {
    // What lies under it goes through its own pictures with the same keys.
    event.stopPropagation();
    const [by, step] = [turns[event.key], keys[event.key]];
    if (by !== undefined && scale === 1) turn(by);
    else if (step !== undefined) onZoom(step);
  };

/** One picture large, or two beside each other, looked at as closely at the same place. */
export const useViewer = ({ pictures, at, onGo }: Opened, startBeside: boolean) => {
  const [zoom, onZoom] = useState(WHOLE);
  const [beside, setBeside] = useState(startBeside);
  const [chosen, setChosen] = useState<string>();
  const stands = standing(pictures, at);
  const { picture, before, after } = stands;
  const go = (to: Picture | undefined): void => {
    if (to === undefined) return;
    onZoom(WHOLE);
    setChosen(undefined);
    onGo(to.id);
  };
  const pair = picture === undefined ? [] : sidesOf(pictures, picture, chosen);
  return {
    ...stands,
    zoom,
    onZoom,
    go,
    onKey: keysOf(zoom.scale, (by) => go(by === 1 ? after : before), onZoom),
    canCompare: pair.length > 1,
    sides: beside ? pair : pair.filter(({ id }) => id === picture?.id),
    beside,
    setBeside,
    /** Another of the same place and side; the other side stays. */
    choose: (one: Picture): void => (one.side === picture?.side ? go(one) : setChosen(one.id)),
  };
};

export type Viewing = ReturnType<typeof useViewer>;
