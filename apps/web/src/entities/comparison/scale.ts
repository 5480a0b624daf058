/** Round marks for an axis: steps of 1, 2 or 5 times a power of ten, at most `most` of them. */
export const axisMarks = (low: number, high: number, most: number): readonly number[] => {
  const rough = (high - low) / Math.max(1, most);
  if (!(rough > 0) || !Number.isFinite(rough)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
};

/** Digits after the point so that an uncertainty shows two figures and its value matches (GUM 7.2.6). */
export const digitsFor = (uncertainty: number): number => {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) return 2;
  return Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(uncertainty))));
};
