/**
 * The address of a recording at one of its seconds (W3C Media Fragments, section 4.2.1), or nothing where it is no address of a page.
 *
 * @example videoSecond("https://example.com/watch?v=1", 75.4) // "https://example.com/watch?v=1#t=75"
 */
export const videoSecond = (address: string, second: number): string | undefined => {
  const text = address.trim();
  if (!URL.canParse(text)) return undefined;
  const url = new URL(text);
  if (url.protocol !== "https:" && url.protocol !== "http:") return undefined;
  url.hash = `t=${Math.floor(second)}`;
  return url.href;
};
