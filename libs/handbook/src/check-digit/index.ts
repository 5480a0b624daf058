/** Values of the characters, 49 CFR 565.15 table III. I, O and Q have none: a VIN never holds them. */
const VALUES: ReadonlyMap<string, number> = new Map(
  Array.from("0123456789ABCDEFGHJKLMNPRSTUVWXYZ", (character, index) => [
    character,
    Number("012345678912345678123457923456789"[index]),
  ]),
);

/** Weights of the 17 positions, 49 CFR 565.15 table IV; the check digit's own place weighs nothing. */
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const;

/**
 * Sum of the characters' values times their positions' weights; `undefined` where the text is not 17 characters
 * a VIN can hold.
 *
 * @example findWeightedSum("1G4AH59H45G118341") // 411
 */
export const findWeightedSum = (vin: string): number | undefined => {
  if (vin.length !== WEIGHTS.length) return undefined;
  let sum = 0;
  for (const [index, weight] of WEIGHTS.entries()) {
    const value = VALUES.get(vin[index] ?? "");
    if (value === undefined) return undefined;
    sum += value * weight;
  }
  return sum;
};

/**
 * The check digit a VIN ought to carry: the remainder of the weighted sum on division by 11, 10 being X
 * (49 CFR 565.15(c)).
 *
 * @param vin 17 characters, capitals; what stands in position 9 plays no part, but must be a VIN character
 * @returns `undefined` where the text is not 17 characters a VIN can hold
 * @example findCheckDigit("1G4AH59H05G118341") // "4"
 */
export const findCheckDigit = (vin: string): string | undefined => {
  const sum = findWeightedSum(vin);
  if (sum === undefined) return undefined;
  const remainder = sum % 11;
  return remainder === 10 ? "X" : String(remainder);
};

/**
 * Whether the check digit of a VIN is the one it ought to carry.
 *
 * @example hasRightCheckDigit("11111111111111111") // true
 */
export const hasRightCheckDigit = (vin: string): boolean =>
  vin[8] !== undefined && findCheckDigit(vin) === vin[8];
