import { matterWords } from "@evenhand/decision/open-matters";
import type { Decision } from "@evenhand/shared/http/summaries";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Facts, Panel } from "../../ui/Page";
import { capital } from "../../entities/sheet/sheet-index";

/** What was decided, on which hash, in which words. */
export const Decided = ({ decision }: { readonly decision: Decision }) => {
  const t = useText();
  const intl = useIntl();
  const when = (instant: string): string =>
    intl.formatDate(instant, { dateStyle: "long", timeStyle: "short" });
  const rows: (readonly [string, ReactNode])[] = [
    [t("decided.when"), when(decision.decidedAt)],
    [t("summary.hash"), <code key="hash">{decision.hash}</code>],
  ];
  if (decision.price !== null) rows.push([t("decide.price"), moneyText(intl, decision.price)]);
  if (decision.conditions !== null) rows.push([t("decide.conditions"), decision.conditions]);
  for (const { matter, answer, words } of decision.acknowledgements) {
    const said = t(`decided.matter.${answer}`);
    rows.push([capital(matterWords(matter)), words === undefined ? said : `${said}: “${words}”`]);
  }
  if (decision.answer !== null) {
    rows.push([
      t("decided.answer"),
      t(`decided.answer.${decision.answer.answer}`, { date: when(decision.answer.answeredAt) }),
    ]);
    if (decision.answer.note !== null) rows.push([t("decided.note"), decision.answer.note]);
  }
  return (
    <Panel title={t(`decided.${decision.decision}`)}>
      <Facts rows={rows} />
    </Panel>
  );
};
