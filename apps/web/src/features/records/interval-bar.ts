import type { Interval } from "@evenhand/shared/comparison";

export type Bar = { readonly from: string; readonly width: string; readonly at: string };

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`;

/**
 * Where an interval of a share lies on a bar from 0 to `top`.
 *
 * @example intervalBar({ estimate: 0.56, low: 0.4, high: 0.71 }, 1) // { from: "40%", width: "31%", at: "56%" }
 */
export const intervalBar = ({ estimate, low, high }: Interval, top: number): Bar => {
  const [from, to] = [clamp(low / top), clamp(high / top)];
  return { from: percent(from), width: percent(Math.max(0, to - from)), at: percent(clamp(estimate / top)) };
};

const TOPS = [0.05, 0.1, 0.2, 0.5];

/**
 * Where bars end that must hold all these shares: they are small, so that bars to 100 % would show nothing.
 *
 * @example topOf([0.031, 0.08]) // 0.1
 */
export const topOf = (highs: readonly number[]): number =>
  TOPS.find((top) => highs.every((high) => high <= top)) ?? 1;
