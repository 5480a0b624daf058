import { Button } from "@mantine/core";
import type { QuestionSeen } from "@evenhand/shared/http/questions";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
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
import { AnswerQuestion } from "../../features/questions/AnswerQuestion";
import { questionQuery } from "../../features/questions/queries";
import styles from "../../features/questions/Questions.module.css";

const route = getRouteApi("/signed-in/questions/$question");

const AnswerSaid = ({ question }: { readonly question: QuestionSeen }) => {
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
      {statement === null ? (
        <p className={styles.hint}>{t("question.answer.draft")}</p>
      ) : (
        <>
          <p>{t("question.answer.version", { version: statement.version })}</p>
          <div>
            <LinkButton variant="default" to="/report-versions/$version" params={{ version: statement.id }}>
              {t("question.answer.read")}
            </LinkButton>
          </div>
        </>
      )}
    </>
  );
};

/** While drafted it can be sent, while asked withdrawn. */
const BuyerMoves = ({ question }: { readonly question: QuestionSeen }) => {
  const t = useText();
  const queries = useQueryClient();
  const change = useMutation({
    mutationFn: (move: "send" | "withdraw") =>
      call("questions.change", {
        params: { id: question.id },
        ifMatch: question.revision,
        body: { move },
      }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["question", question.id] }),
  });
  const { state } = question;
  if (state !== "drafted" && state !== "asked") return null;
  return (
    <>
      {change.error !== null && <ProblemNotice error={change.error} />}
      <div className={styles.buttons}>
        {state === "drafted" && (
          <Button loading={change.isPending} onClick={() => change.mutate("send")}>
            {t("questions.send")}
          </Button>
        )}
        {state === "asked" && (
          <Button variant="default" loading={change.isPending} onClick={() => change.mutate("withdraw")}>
            {t("question.withdraw")}
          </Button>
        )}
      </div>
    </>
  );
};

/** One question with its answer; the dealer answers it with a finding. */
export const QuestionPage = () => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const words = useItemWords();
  const account = useAccount();
  const { question: id } = route.useParams();
  const { data: question, error } = useQuery(questionQuery(id));
  const car = useQuery({ ...carQuery(question?.vehicle ?? ""), enabled: question !== undefined }).data;
  if (error) {
    return (
      <Page title={t("question.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!question) return <Loading />;
  const own = account?.memberships.some(({ organization }) => organization.id === car?.dealer.id) ?? false;
  const when = intl.formatDate(question.askedAt ?? question.createdAt, {
    dateStyle: "long",
    timeStyle: "short",
  });
  return (
    <Page
      title={words(question)}
      over={<Link to="/questions">{t("nav.questions")}</Link>}
      under={t(question.askedAt === null ? "question.created" : "question.asked", { when })}
      narrow
    >
      <Panel title={t("question.title")}>
        <p className={styles.said}>{question.text}</p>
        <Facts
          rows={[
            [
              t("question.car"),
              car ? (
                <Link key="car" to="/cars/$vehicle" params={{ vehicle: car.id }}>
                  {name(car.vehicle)}
                </Link>
              ) : (
                ""
              ),
            ],
            [t("question.state"), <Tag key="state">{t(`questions.state.${question.state}`)}</Tag>],
          ]}
        />
        {!own && <BuyerMoves question={question} />}
      </Panel>
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
