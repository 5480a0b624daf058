import { Button } from "@mantine/core";
import type { QuestionSeen } from "@evenhand/shared/http/questions";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { RefusedPage } from "../../ui/Failed";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { useItemWords } from "../../entities/sheet/item-words";
import { answerWords } from "../../entities/sheet/answer-text";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import { OverPart } from "../../entities/case/OverPart";
import { AnswerQuestion } from "../../features/questions/AnswerQuestion";
import { questionQuery } from "../../features/questions/queries";
import styles from "../../features/questions/Questions.module.css";

const route = getRouteApi("/signed-in/questions/$question");

interface Props {
  readonly question: QuestionSeen;
}

/** The version of the statement that first says it; a draft until that is sealed. */
const WhereSealed = ({ statement }: Pick<QuestionSeen, "statement">) => {
  const t = useText();
  if (statement === null) return <p className={styles.hint}>{t("question.answer.draft")}</p>;
  return (
    <>
      <p>{t("question.answer.version", { version: statement.version })}</p>
      <div>
        <LinkButton variant="default" to="/report-versions/$version" params={{ version: statement.id }}>
          {t("question.answer.read")}
        </LinkButton>
      </div>
    </>
  );
};

const AnswerSaid = ({ question }: Props) => {
  const t = useText();
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const { finding, state, statement } = question;
  const item = index?.items.get(question.item);
  if (finding === null) {
    return <p>{t(state === "answered" ? "question.answer.sealed-later" : "question.answer.waits")}</p>;
  }
  if (!index || !item) return <Loading />;
  const { text } = answerWords({ index, item, scales: [] }, finding.answer);
  return (
    <>
      <p>
        <strong>{text}</strong> · {t(`firmness.${finding.firmness}`)} · {t(`basis.${finding.basis}`)}
      </p>
      {finding.note !== undefined && <p className={styles.said}>{finding.note}</p>}
      <WhereSealed statement={statement} />
    </>
  );
};

/** While drafted it can be sent, while asked withdrawn. */
const buyerMoves = {
  drafted: { move: "send", words: "questions.send", variant: "filled" },
  asked: { move: "withdraw", words: "question.withdraw", variant: "default" },
} as const;

const BuyerMove = ({ question, state }: Props & { readonly state: keyof typeof buyerMoves }) => {
  const t = useText();
  const queries = useQueryClient();
  const { move, words, variant } = buyerMoves[state];
  const change = useMutation({
    mutationFn: () =>
      call("questions.change", { params: { id: question.id }, ifMatch: question.revision, body: { move } }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["question", question.id] }),
  });
  return (
    <>
      {change.error !== null && <ProblemNotice error={change.error} />}
      <div className={styles.buttons}>
        <Button variant={variant} loading={change.isPending} onClick={() => change.mutate()}>
          {t(words)}
        </Button>
      </div>
    </>
  );
};

interface AskedProps extends Props {
  readonly car: VehicleDetail | undefined;
  readonly own: boolean;
}

/** The question itself, about which car, how it stands, and what the buyer may do with it. */
const Asked = ({ question, car, own }: AskedProps) => {
  const t = useText();
  const name = useCarName();
  const { state } = question;
  const carLink = car ? (
    <Link key="car" to="/cars/$vehicle" params={{ vehicle: car.id }}>
      {name(car.vehicle)}
    </Link>
  ) : (
    ""
  );
  return (
    <Panel title={t("question.title")}>
      <p className={styles.said}>{question.text}</p>
      <Facts
        rows={[
          [t("question.car"), carLink],
          [t("question.state"), <Tag key="state">{t(`questions.state.${state}`)}</Tag>],
        ]}
      />
      {!own && (state === "drafted" || state === "asked") && <BuyerMove question={question} state={state} />}
    </Panel>
  );
};

const useAskedWhen = (): ((question: QuestionSeen) => string) => {
  const t = useText();
  const intl = useIntl();
  return ({ askedAt, createdAt }) =>
    t(askedAt === null ? "question.created" : "question.asked", {
      when: intl.formatDate(askedAt ?? createdAt, { dateStyle: "long", timeStyle: "short" }),
    });
};

/** The question and its car, to the dealer who is asked: their own. */
const useQuestion = (id: string) => {
  const account = useAccount();
  const { data: question, error } = useQuery(questionQuery(id));
  const car = useQuery({ ...carQuery(question?.vehicle ?? ""), enabled: question !== undefined }).data;
  const own = account?.memberships.some(({ organization }) => organization.id === car?.dealer.id) ?? false;
  return { question, error, car, own };
};

const OverQuestion = ({ id }: { readonly id: string }) => {
  const t = useText();
  return (
    <OverPart parts={[id]}>
      <Link to="/questions">{t("nav.questions")}</Link>
    </OverPart>
  );
};

/** One question with its answer; the dealer answers it with a finding. */
export const QuestionPage = () => {
  const t = useText();
  const words = useItemWords();
  const when = useAskedWhen();
  const { question: id } = route.useParams();
  const { question, error, car, own } = useQuestion(id);
  if (error) return <RefusedPage title={t("question.title")} error={error} />;
  if (!question) return <Loading />;
  return (
    <Page title={words(question)} over={<OverQuestion id={question.id} />} under={when(question)} narrow>
      <Asked question={question} car={car} own={own} />
      {question.state !== "drafted" && question.state !== "withdrawn" && (
        <Panel title={t("question.answer")}>
          <AnswerSaid question={question} />
        </Panel>
      )}
      {own && question.state === "asked" && car !== undefined && (
        <AnswerQuestion question={question} car={car} />
      )}
    </Page>
  );
};
