import type { HandOverStage } from "@evenhand/shared/http/hand-overs";
import {
  blankSheet,
  type CarriedSheet,
  filledIn,
  isBlank,
  keptText,
  readKept,
  type ReadKept,
  type SheetAct,
} from "./carried-sheet";

/** Where a device keeps text: `localStorage`, in a browser. */
export type TextStore = Pick<Storage, "getItem" | "setItem" | "removeItem">;

export interface Keeping {
  readonly sheet: CarriedSheet;
  /** What stands on the device now: all that was typed, or nothing yet; or it could not be written. */
  readonly kept: "nothing" | "kept" | "not-kept";
  /** What was found when the page was opened. */
  readonly found: ReadKept["kind"];
}

export interface SheetKeeper {
  readonly get: () => Keeping;
  readonly subscribe: (heard: () => void) => () => void;
  /** Fills in, and writes it down at once. */
  readonly enter: (done: SheetAct) => void;
  /** Takes away what the device kept of it: it is signed. */
  readonly clear: () => void;
}

interface Of {
  readonly handOver: string;
  readonly stage: HandOverStage;
}

/** Made from the hand-over and not from the link's secret: a new link finds it again, and whoever reads the device learns no link. */
export const keptKey = ({ handOver, stage }: Of): string => `evenhand-carried/${handOver}/${stage}`;

const tried = <T>(deed: () => T, otherwise: T): T => {
  try {
    return deed();
  } catch {
    // Full, forbidden or none: what it means is said on the page.
    return otherwise;
  }
};

function opened(store: TextStore | null, of: Of, now: string): Keeping {
  const blank = blankSheet(now);
  if (store === null) return { sheet: blank, kept: "not-kept", found: "nothing" };
  const earlier =
    of.stage === "delivery" && tried(() => store.getItem(keptKey({ ...of, stage: "collection" })), null);
  const read = tried(() => readKept(store.getItem(keptKey(of)), of.stage), { kind: "nothing" });
  if (read.kind === "restored") return { sheet: read.sheet, kept: "kept", found: "restored" };
  const found = read.kind === "nothing" && typeof earlier === "string" ? "other-stage" : read.kind;
  return { sheet: blank, kept: "nothing", found };
}

const written = (store: TextStore | null, of: Of, sheet: CarriedSheet): Keeping["kept"] =>
  tried(() => {
    if (store === null) return "not-kept";
    if (isBlank(sheet)) {
      store.removeItem(keptKey(of));
      return "nothing";
    }
    const text = keptText(of.stage, sheet);
    store.setItem(keptKey(of), text);
    return store.getItem(keptKey(of)) === text ? "kept" : "not-kept";
  }, "not-kept");

const clearedOf = (store: TextStore | null, of: Of): void => {
  for (const stage of ["collection", of.stage] as const) {
    tried(() => store?.removeItem(keptKey({ ...of, stage })), undefined);
  }
};

/**
 * Keeps one stage's sheet on this device as it is filled in, and nowhere else.
 *
 * @param store `null` where the device has none to give
 * @param now UTC instant at which a new sheet is begun
 */
export function sheetKeeper(store: TextStore | null, of: Of, now: string): SheetKeeper {
  let keeping = opened(store, of, now);
  const hearers = new Set<() => void>();
  return {
    get: () => keeping,
    subscribe: (heard) => {
      hearers.add(heard);
      return () => hearers.delete(heard);
    },
    enter: (done) => {
      const sheet = filledIn(keeping.sheet, done);
      keeping = { ...keeping, sheet, kept: written(store, of, sheet) };
      for (const heard of hearers) heard();
    },
    clear: () => clearedOf(store, of),
  };
}
