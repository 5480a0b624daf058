import type { CarriedHandOver } from "@evenhand/shared/http/hand-overs";
import { useState, useSyncExternalStore } from "react";
import { sheetKeeper, type TextStore } from "./sheet-keeper";

/** A browser that forbids it throws where it is only named. */
const ownStore = (): TextStore | null => {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
};

/** What was written on the sheet so far, kept on this device. */
export const useSaid = ({ handOver, stage }: Pick<CarriedHandOver, "handOver" | "stage">) => {
  const [keeper] = useState(() => sheetKeeper(ownStore(), { handOver, stage }, new Date().toISOString()));
  return { ...useSyncExternalStore(keeper.subscribe, keeper.get), enter: keeper.enter, clear: keeper.clear };
};
