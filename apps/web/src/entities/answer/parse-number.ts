/** A comma is a decimal point where the pad offers only that. */
export const parseNumber = (text: string): number | undefined => {
  const trimmed = text.trim().replace(",", ".").replace("−", "-");
  if (!/\d/.test(trimmed) || !/^-?\d*\.?\d*$/.test(trimmed)) return undefined;
  return Number(trimmed);
};
