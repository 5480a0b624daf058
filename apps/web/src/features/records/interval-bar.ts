import type { Interval } from "@evenhand/shared/comparison";

export type Bar = { readonly from: string; readonly width: string; readonly at: string };

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`;

/**
 * Where an interval of a share lies on a bar from 0 to 100 %.
 *
 * @example intervalBar({ estimate: 0.56, low: 0.4, high: 0.71 }) // { from: "40%", width: "31%", at: "56%" }
 */
export const intervalBar = ({ estimate, low, high }: Interval): Bar => {
  const [from, to] = [clamp(low), clamp(high)];
  return { from: percent(from), width: percent(Math.max(0, to - from)), at: percent(clamp(estimate)) };
};
