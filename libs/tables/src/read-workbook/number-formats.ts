import { readXml } from "../read-xml/index.ts";

/** How the number in a cell is shown: as a day, as per cent, and with what words behind it (`0.0" mm"`). */
export type NumberFormat = {
  readonly kind: "number" | "date" | "percent";
  readonly behind: string;
};

const GENERAL: NumberFormat = { kind: "number", behind: "" };

/** Formats every spreadsheet knows without being told (ECMA-376 Part 1, 18.8.30): 14–22 and 45–47 are of days and times, 9 and 10 per cent. */
const builtIn = (id: number): NumberFormat => {
  if ((id >= 14 && id <= 22) || (id >= 45 && id <= 47)) return { kind: "date", behind: "" };
  return id === 9 || id === 10 ? { kind: "percent", behind: "" } : GENERAL;
};

/** A format of the workbook's own. Only its first part, which is that of what is above zero. */
const ownFormat = (code: string): NumberFormat => {
  const first = /^(?:"[^"]*"|\\.|\[[^\]]*\]|[^;"\\[])*/.exec(code)?.[0] ?? "";
  const bare = first.replaceAll(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
  if (bare.includes("%")) return { kind: "percent", behind: "" };
  if (/[ymdhs]/i.test(bare) && !/general/i.test(bare)) return { kind: "date", behind: "" };
  const behind = /[0#?](?:"([^"]*)"|((?:\\.)+))\s*$/.exec(first);
  return { kind: "number", behind: (behind?.[1] ?? behind?.[2]?.replaceAll("\\", "") ?? "").trim() };
};

/** The number format of every style of cell, by the style's number. */
export const numberFormats = (text: string | undefined, part: string): NumberFormat[] => {
  const own = new Map<number, NumberFormat>();
  const styles: NumberFormat[] = [];
  if (text === undefined) return styles;
  let inStyles = false;
  readXml(text, part, {
    open: (name, attributes) => {
      if (name === "numFmt")
        own.set(Number(attributes["numFmtId"]), ownFormat(attributes["formatCode"] ?? ""));
      if (name === "cellXfs") inStyles = true;
      if (name !== "xf" || !inStyles) return;
      const id = Number(attributes["numFmtId"] ?? 0);
      styles.push(own.get(id) ?? builtIn(id));
    },
    text: () => undefined,
    close: (name) => {
      if (name === "cellXfs") inStyles = false;
    },
  });
  return styles;
};

const pad = (value: number): string => String(value).padStart(2, "0");

const MS_OF_DAY = 86_400_000;

/** Day 1 is 1 January 1900, and 29 February 1900 is counted, which never was; or day 0 is 1 January 1904. */
const dayText = (serial: number, from1904: boolean): string | undefined => {
  const base = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, serial < 60 ? 31 : 30);
  const at = new Date(base + Math.floor(serial) * MS_OF_DAY);
  if (Number.isNaN(at.getTime())) return undefined;
  return `${String(at.getUTCFullYear()).padStart(4, "0")}-${pad(at.getUTCMonth() + 1)}-${pad(at.getUTCDate())}`;
};

/** A time of day without a day is less than 1. */
const dateText = (serial: number, from1904: boolean): string | undefined => {
  const minutes = Math.round((serial % 1) * 1440);
  const time = `${pad(Math.floor(minutes / 60) % 24)}:${pad(minutes % 60)}`;
  if (serial < 1) return time;
  const day = dayText(serial, from1904);
  return day === undefined || minutes === 0 ? day : `${day} ${time}`;
};

/** Fifteen figures are what a spreadsheet shows: 5.2999999999999998 was typed as 5.3. */
const plain = (value: number): string => String(Number(value.toPrecision(15)));

/**
 * What a cell with a number shows, as text: days as ISO 8601, per cent with its sign, and words its format puts behind it.
 *
 * @example shownNumber("0.21875", { kind: "number", behind: "in" }, false) // "0.21875 in"
 */
export const shownNumber = (raw: string, format: NumberFormat | undefined, from1904: boolean): string => {
  const value = Number(raw);
  if (raw.trim() === "" || !Number.isFinite(value)) return raw;
  if (format?.kind === "date") return (value >= 0 ? dateText(value, from1904) : undefined) ?? plain(value);
  if (format?.kind === "percent") return `${plain(value * 100)}%`;
  return format === undefined || format.behind === "" ? plain(value) : `${plain(value)} ${format.behind}`;
};
