import { differenceCiede2000 } from "culori/fn";

/** CIE L*a*b* of one color, under one illuminant and observer throughout. */
export type Lab = { readonly L: number; readonly a: number; readonly b: number };

const difference = differenceCiede2000();

/**
 * Color difference ΔE00 by CIEDE2000 (ISO/CIE 11664-6) with kL = kC = kH = 1. Symmetric.
 *
 * Source: Sharma, Wu, Dalal 2005, by the library culori.
 *
 * @example colorDifference({ L: 50, a: 2.6772, b: -79.7751 }, { L: 50, a: 0, b: -82.7485 }) // 2.0424…
 */
export const colorDifference = (one: Lab, other: Lab): number =>
  difference(
    { mode: "lab65", l: one.L, a: one.a, b: one.b },
    { mode: "lab65", l: other.L, a: other.a, b: other.b },
  );
