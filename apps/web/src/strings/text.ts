import { useCallback } from "react";
import { useIntl } from "react-intl";
import type { MessageId } from "./en";

export type Values = Readonly<Record<string, string | number | Date>>;
export type Text = (id: MessageId, values?: Values) => string;

/** Words from the catalog; an id that is not in it does not compile. */
export const useText = (): Text => {
  const intl = useIntl();
  return useCallback((id, values) => intl.formatMessage({ id }, values), [intl]);
};
