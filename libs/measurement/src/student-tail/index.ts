import { normalCdf } from "../normal-distribution/index.ts";
import { studentCdf } from "../student-distribution/index.ts";

/** From here on Hill's transformation gives the probability to 1e-12, at a sixth of the library's time. */
const MANY = 30;

/** Hill's transformation of Student's t to the normal z of the same tail (Hill 1970, CACM 13, 617: algorithm 395). */
const normalOf = (t: number, degreesOfFreedom: number): number => {
  const a = degreesOfFreedom - 0.5;
  const b = 48 * a * a;
  const y = a * Math.log1p((t * t) / degreesOfFreedom);
  const series = ((((-0.4 * y - 3.3) * y - 24) * y - 85.5) / (0.8 * y * y + 100 + b) + y + 3) / b + 1;
  return series * Math.sqrt(y);
};

/**
 * Probability that a Student variable lies beyond `t` on one side: to 1e-12, and to 2e-7 of itself for `t` up to 8
 * (tests/published/distributions.test.ts). For reports of hundreds of readings, whose repeatabilities have 30 degrees of freedom
 * or more.
 *
 * @param t from 0
 * @param degreesOfFreedom positive, need not be whole
 * @example studentTail(2, 30) // 0.0273125…
 */
export const studentTail = (t: number, degreesOfFreedom: number): number => {
  if (degreesOfFreedom < MANY || degreesOfFreedom === Number.POSITIVE_INFINITY) {
    return studentCdf(-t, degreesOfFreedom);
  }
  return normalCdf(-normalOf(t, degreesOfFreedom));
};
