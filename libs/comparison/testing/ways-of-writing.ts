import type { Answer } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import type { CodeSystem } from "@evenhand/shared/sheet";
import { UnitSymbol } from "@evenhand/shared/unit";
import { convert, dimensionOf } from "@evenhand/measurement/unit";
import { sheet } from "./small-reports.ts";

/** The same facts written otherwise: readings and extents in another unit, codes in another notation. */

const unitsLike = (unit: UnitSymbol): UnitSymbol[] =>
  UnitSymbol.options.filter((other) => dimensionOf(other) === dimensionOf(unit));

const inOther = (pick: number, unit: UnitSymbol): UnitSymbol => {
  const units = unitsLike(unit);
  return units[pick % units.length] ?? unit;
};

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

const anyCode: readonly ((text: string) => string)[] = [
  (text) => text.toLowerCase(),
  (text) => ` ${text} `,
  (text) => text.toUpperCase(),
];

const numbers: readonly ((text: string) => string)[] = [
  ...anyCode,
  (text) => text.replaceAll(" ", "-"),
  (text) => text.replaceAll(/[ -]/g, ""),
  (text) => `No. ${text}`,
];

const dates: readonly ((text: string) => string)[] = [
  ...anyCode,
  (text) =>
    text.replace(/^(\d{4})-(\d{2})-(\d{2})$/, (_, year, month, day) => {
      return `${String(day)} ${MONTHS[Number(month) - 1] ?? ""} ${String(year)}`;
    }),
  (text) =>
    text.replace(/^([A-Z][a-z]{2})[a-z]* (\d{4})$/, (_, month, year) => {
      return `${String(year)}-${String(MONTHS.indexOf(String(month)) + 1).padStart(2, "0")}`;
    }),
];

const sizes: readonly ((text: string) => string)[] = [
  ...anyCode,
  (text) => text.replace("/", " / "),
  (text) => (/^\d{3}\/\d{2}R\d{2}$/.test(text) ? `P${text} 93H` : text),
  (text) => text.replace("-", " x "),
];

const NOTATIONS: Partial<Record<CodeSystem, readonly ((text: string) => string)[]>> = {
  vin: [
    ...numbers,
    // Letters a VIN never holds; an older chassis number may.
    (text) => (text.length === 17 ? text.replaceAll("0", "O") : text),
    (text) => (text.length === 17 ? text.replaceAll("1", "I") : text),
  ],
  "chassis-number": numbers,
  "casting-number": numbers,
  "paint-code": numbers,
  "tire-identification": [...numbers, (text) => (text.length > 4 ? `DOT ${text}` : text)],
  "tire-size": sizes,
  "date-code": dates,
};

const codeOtherwise = (text: string, item: string, pick: number): string => {
  const system = sheet.items.get(item)?.item.code?.system ?? "text";
  const ways = NOTATIONS[system] ?? anyCode;
  return ways[pick % ways.length]?.(text) ?? text;
};

const unitsOtherwise = (answer: Answer, pick: number): Answer => {
  if (answer.kind === "reading") {
    const unit = inOther(pick, answer.unit);
    const values = answer.values.map(({ value, spot }) => ({
      value: convert(value, answer.unit, unit),
      spot,
    }));
    return { ...answer, unit, values };
  }
  if (answer.kind !== "faults") return answer;
  const found = answer.found.map((fault) => {
    if (fault.extent === undefined) return fault;
    const unit = inOther(pick, fault.extent.unit);
    return { ...fault, extent: { unit, value: convert(fault.extent.value, fault.extent.unit, unit) } };
  });
  return { ...answer, found };
};

const withAnswers = (report: Report, rewrite: (answer: Answer, item: string) => Answer): Report => ({
  ...report,
  findings: report.findings.map((finding) => ({ ...finding, answer: rewrite(finding.answer, finding.item) })),
});

/** Every reading and extent in another unit of its dimension. */
export const inOtherUnits = (report: Report, pick: number): Report =>
  withAnswers(report, (answer) => unitsOtherwise(answer, pick));

/** Every reading and extent in another unit of its dimension, every code in another notation of its system. */
export const writtenOtherwise = (report: Report, pick: number): Report =>
  withAnswers(report, (answer, item) =>
    answer.kind === "code"
      ? { ...answer, text: codeOtherwise(answer.text, item, pick) }
      : unitsOtherwise(answer, pick),
  );
