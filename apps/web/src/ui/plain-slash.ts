/** Fonts set the digits before a fraction slash as a numerator, which breaks `5.8⁄32 in`. */
export const plainSlash = (text: string): string => text.replaceAll("⁄", "/");
