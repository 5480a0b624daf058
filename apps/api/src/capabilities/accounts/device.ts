const browsers: readonly [RegExp, string][] = [
  [/\bEdg(?:A|iOS)?\//, "Edge"],
  [/\bFirefox\/|\bFxiOS\//, "Firefox"],
  [/\bOPR\//, "Opera"],
  [/\bChrome\/|\bCriOS\//, "Chrome"],
  [/\bSafari\//, "Safari"],
];
const systems: readonly [RegExp, string][] = [
  [/\bAndroid\b/, "Android"],
  [/\b(iPhone|iPad)\b/, "iOS"],
  [/\bWindows\b/, "Windows"],
  [/\bMac OS X\b/, "macOS"],
  [/\bLinux\b/, "Linux"],
];
const nameIn = (table: readonly [RegExp, string][], text: string): string | undefined =>
  table.find(([pattern]) => pattern.test(text))?.[1];

/**
 * Browser and system in a few words, for the owner's list of sessions. The browser's own line is not kept: it tells more than that.
 *
 * @example describeDevice("Mozilla/5.0 (X11; Linux x64) … Firefox/140.0") // "Firefox on Linux"
 */
export function describeDevice(userAgent: string | undefined): string {
  const browser = nameIn(browsers, userAgent ?? "") ?? "A browser or program";
  const system = nameIn(systems, userAgent ?? "");
  return system === undefined ? browser : `${browser} on ${system}`;
}
