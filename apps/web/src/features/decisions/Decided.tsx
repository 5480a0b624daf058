import type { Decision } from "@evenhand/shared/http/summaries";
import type { OpenMatter } from "@evenhand/shared/summary";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Facts, Panel } from "../../ui/Page";

interface Props {
  readonly decision: Decision;
  readonly matters: readonly OpenMatter[];
}

type Rows = readonly (readonly [string, ReactNode])[];

const useMatterFacts = ({ decision, matters }: Props): Rows => {
  const t = useText();
  const headlines = new Map(matters.map(({ id, headline }) => [id, headline]));
  return decision.acknowledgements.map(({ matter, answer, words }) => {
    const said = t(`decided.matter.${answer}`);
    return [headlines.get(matter) ?? matter, words === undefined ? said : `${said}: “${words}”`];
  });
};

const useAnswerFacts = ({ answer }: Decision): Rows => {
  const t = useText();
  const intl = useIntl();
  if (answer === null) return [];
  const date = intl.formatDate(answer.answeredAt, { dateStyle: "long", timeStyle: "short" });
  const said = [t("decided.answer"), t(`decided.answer.${answer.answer}`, { date })] as const;
  return answer.note === null ? [said] : [said, [t("decided.note"), answer.note]];
};

/** Until when it stood, what was said to the dealer's counter, and how it ended without an answer. */
const useOfferFacts = ({ until, reply, ended }: Decision): Rows => {
  const t = useText();
  const intl = useIntl();
  const time = (at: string): string => intl.formatDate(at, { dateStyle: "long", timeStyle: "short" });
  return [
    ...(until === null ? [] : [[t("decided.until"), time(until)] as const]),
    ...(reply === null
      ? []
      : [[t("decided.reply"), t(`decided.reply.${reply.reply}`, { date: time(reply.repliedAt) })] as const]),
    ...(ended === null
      ? []
      : [[t("decided.ended"), t(`decided.ended.${ended.how}`, { date: time(ended.at) })] as const]),
  ];
};

/** What was decided, on which hash, in which words. */
export const Decided = (props: Props) => {
  const t = useText();
  const intl = useIntl();
  const { decision } = props;
  const { price, conditions, decidedAt, hash } = decision;
  const rows: Rows = [
    [t("decided.when"), intl.formatDate(decidedAt, { dateStyle: "long", timeStyle: "short" })],
    ...(price === null ? [] : [[t("decide.price"), moneyText(intl, price)] as const]),
    ...(conditions === null ? [] : [[t("decide.conditions"), conditions] as const]),
    ...useMatterFacts(props),
    ...useAnswerFacts(decision),
    ...useOfferFacts(decision),
    [t("summary.hash"), <code key="hash">{hash}</code>],
  ];
  return (
    <Panel title={t(`decided.${decision.decision}`)}>
      <Facts rows={rows} />
    </Panel>
  );
};
