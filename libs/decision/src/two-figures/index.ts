/**
 * An amount to two digits: more would say that somebody knows.
 *
 * @param minor whole minor units, from 0
 * @example twoFigures(4_107_104) // 4100000
 * @example twoFigures(7) // 7
 */
export const twoFigures = (minor: number): number => Math.round(Number(minor.toPrecision(2)));
