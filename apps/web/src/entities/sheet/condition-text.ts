import type { Conditions } from "@evenhand/shared/finding";
import type { IntlShape } from "react-intl";
import type { z } from "zod";
import { quantity } from "./answer-text";
import { spelled, type SheetIndex } from "./sheet-index";

/** The circumstances of a finding in words: `engine warm; tires cold; height above the sea 2,100 ft`. */
export const conditionText = (
  intl: IntlShape,
  index: SheetIndex,
  conditions: z.infer<typeof Conditions>,
): string =>
  Object.entries(conditions)
    .map(([id, value]) => {
      const kind = index.sheet.conditions.find((one) => one.id === id);
      const name = kind?.words.american ?? spelled(id);
      if (value === false && kind?.otherwise !== undefined) return kind.otherwise.american;
      if (typeof value === "boolean")
        return intl.formatMessage({ id: value ? "condition.yes" : "condition.no" }, { name });
      if (typeof value === "number")
        return `${name} ${kind?.unit === undefined ? intl.formatNumber(value) : quantity(value, kind.unit)}`;
      return `${name}: ${value}`;
    })
    .join("; ");
