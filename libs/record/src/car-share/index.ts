import { clusterShare } from "@evenhand/measurement/cluster-ratio";
import type { Cluster } from "@evenhand/measurement/cluster-ratio";

/** Nothing is said of fewer cars. */
export const LEAST_CARS = 20;
const CONFIDENCE = 0.9;

/** A share and its 90 % interval, from 0 to 1. */
export type Share = { readonly estimate: number; readonly low: number; readonly high: number };

/**
 * A share over cars, 90 %, with the car as the cluster: what is counted on one car is not independent.
 *
 * @param cars how many of how many on each
 * @throws RangeError as `clusterShare` does
 * @example carShare([{ total: 1, count: 4 }, { total: 2, count: 6 }])// { of: 10, share: { estimate: 0.3, low: …, high: … } }
 */
export const carShare = (cars: readonly Cluster[]): { readonly of: number; readonly share: Share } => {
  const { estimate, low, high, count } = clusterShare(cars, CONFIDENCE);
  return { of: count, share: { estimate, low, high } };
};
