/** Text laid out in columns of fixed-width characters. Every sign used here is one column wide. */

const fit = (text: string, width: number): string[] => {
  const pieces: string[] = [];
  for (let start = 0; start < text.length; start += width) pieces.push(text.slice(start, start + width));
  return pieces;
};

/**
 * Breaks a text into lines of at most `width` characters, at spaces; a longer word is cut.
 *
 * @example wrap("left front wheel", 10) // ["left front", "wheel"]
 */
export const wrap = (text: string, width: number): string[] => {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).flatMap((one) => fit(one, width))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (longer.length <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return line === "" ? lines : [...lines, line];
};

export type Cell = { readonly text: string; readonly width: number; readonly align?: "left" | "right" };

/** Cells side by side, each wrapped in its own width, two spaces between; trailing spaces are cut. */
export const columns = (cells: readonly Cell[]): string[] => {
  const wrapped = cells.map((cell) => wrap(cell.text, cell.width));
  const height = Math.max(1, ...wrapped.map((lines) => lines.length));
  return Array.from({ length: height }, (_, row) =>
    cells
      .map(({ width, align }, column) => {
        const line = wrapped[column]?.[row] ?? "";
        return align === "right" ? line.padStart(width) : line.padEnd(width);
      })
      .join("  ")
      .trimEnd(),
  );
};

/** A text wrapped with the same margin before every line. */
export const indented = (text: string, margin: number, width: number): string[] =>
  wrap(text, Math.max(20, width - margin)).map((line) => " ".repeat(margin) + line);
