import type { QuestionSeen } from "@evenhand/shared/http/questions";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { LinkButton } from "../../ui/LinkButton";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { useItemWords } from "../../entities/sheet/item-words";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import { questionsQuery } from "../../features/questions/queries";

const route = getRouteApi("/signed-in/questions");

const QuestionLine = ({ question }: { readonly question: QuestionSeen }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const words = useItemWords();
  const car = useQuery(carQuery(question.vehicle)).data;
  const { askedAt, createdAt, state } = question;
  const when = intl.formatDate(askedAt ?? createdAt, { dateStyle: "medium" });
  return (
    <Line
      main={
        <Link to="/questions/$question" params={{ question: question.id }}>
          {words(question)}
        </Link>
      }
      sub={dotted([
        car && name(car.vehicle),
        t(askedAt === null ? "question.created" : "question.asked", { when }),
        question.text.length > 90 ? `${question.text.slice(0, 90)}…` : question.text,
      ])}
      end={<Tag strong={state === "asked"}>{t(`questions.state.${state}`)}</Tag>}
    />
  );
};

const NoQuestions = ({ who }: { readonly who: "dealer" | "buyer" }) => {
  const t = useText();
  return (
    <Empty title={t(`questions.none.${who}`)}>
      <p>{t(`questions.none.${who}.hint`)}</p>
      <LinkButton variant="default" to="/cars">
        {t("nav.cars")}
      </LinkButton>
    </Empty>
  );
};

/** A buyer's own questions, or those put to a dealer. */
export const Questions = () => {
  const t = useText();
  const account = useAccount();
  const { vehicle } = route.useSearch();
  const questions = useInfiniteQuery(questionsQuery({ vehicle }));
  const who = isKind(account, "dealer") ? "dealer" : "buyer";
  return (
    <Page
      title={t("questions.title")}
      under={t(`questions.under.${who}`)}
      narrow
      actions={
        who === "buyer" && vehicle !== undefined ? (
          <LinkButton to="/cars/$vehicle/ask" params={{ vehicle }}>
            {t("questions.ask")}
          </LinkButton>
        ) : undefined
      }
    >
      <Panel>
        <List
          query={questions}
          keyOf={({ id }) => id}
          renderRow={(question) => <QuestionLine question={question} />}
          empty={<NoQuestions who={who} />}
        />
      </Panel>
    </Page>
  );
};
