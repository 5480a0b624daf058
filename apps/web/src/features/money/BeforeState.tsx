import type { BeforeMoneyStanding } from "@evenhand/shared/before-money";
import type { BeforeMoneySeen } from "@evenhand/shared/http/money";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";

const stops = ({ matters }: BeforeMoneyStanding["lines"][number]): boolean =>
  matters.some(({ severity }) => severity === "halt");

/** How the list stands as it was saved; never that it is safe to pay. */
export const BeforeState = ({ seen: { standing, savedAt } }: { readonly seen: BeforeMoneySeen }) => {
  const t = useText();
  const intl = useIntl();
  const { state } = standing;
  const open = standing.lines.filter((one) => one.open !== null);
  const named = state === "stopped" ? open.filter(stops) : open;
  const values = {
    count: named.length,
    lines: named.map(({ line }) => t(`before.line.${line}`)).join("; "),
    date: savedAt === null ? "" : intl.formatDate(savedAt, { dateStyle: "medium" }),
  };
  const says = state === "open" && open.length === 0 ? "unknown" : state;
  return (
    <Notice kind={state === "stopped" ? "caution" : "note"} title={t(`before.state.${says}`, values)}>
      <p>{t(`before.state.${says}.what`, values)}</p>
    </Notice>
  );
};
