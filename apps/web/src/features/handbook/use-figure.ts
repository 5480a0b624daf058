import { UNITS, UnitSymbol } from "@evenhand/shared/unit";
import { formatExact } from "@evenhand/wording/format-figure";
import { useText } from "../../strings/text";
import { quantity } from "../../entities/sheet/answer-text";

/** Figures of the handbook in words: its units are those of readings, with days and years. */
export const useFigure = () => {
  const t = useText();
  const figure = (value: number, unit: string): string => {
    if (unit === "d") return t("handbook.days", { count: value });
    if (unit === "a") return value > 1800 ? String(value) : t("handbook.years", { count: value });
    const known = UnitSymbol.safeParse(unit).data;
    return known ? quantity(value, known) : `${value} ${unit}`;
  };
  const range = ([low, high]: readonly [number, number], unit: string): string =>
    t("own.limit.range", {
      low: unit === "a" ? figure(low, unit) : formatExact(low),
      high: figure(high, unit),
    });
  /** What stands beside a field; nothing for a plain ratio. */
  const unitText = (unit: string): string => {
    if (unit === "d") return t("own.unit.days");
    if (unit === "a") return t("own.unit.years");
    const known = UnitSymbol.safeParse(unit).data;
    return known ? UNITS[known].text : unit;
  };
  return { figure, range, unitText };
};
