/**
 * Text of at most so many characters, ended at a word where there is one near, with an ellipsis where something is left out.
 *
 * @param most characters, the ellipsis among them; at least 2
 * @example shorten("rust along the left sill", 14) // "rust along…"
 * @example shorten("rust", 14) // "rust"
 */
export const shorten = (text: string, most: number): string => {
  const plain = text.replaceAll(/\s+/gu, " ").trim();
  const characters = Array.from(plain);
  if (characters.length <= most) return plain;
  const cut = characters.slice(0, most - 1).join("");
  const word = characters[most - 1] === " " ? cut.length : cut.lastIndexOf(" ");
  return `${(word > cut.length / 2 ? cut.slice(0, word) : cut).replace(/[\s,;:.·(–-]+$/u, "")}…`;
};
