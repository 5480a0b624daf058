import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Step } from "./Step";

interface Props {
  readonly vehicle: string;
}

/** A buyer books an hour of an independent inspector. */
export const BookingStep = ({ vehicle }: Props) => {
  const t = useText();
  return (
    <Step title={t("step.book")}>
      <p>{t("step.book.what")}</p>
      <div style={{ display: "flex", flexWrap: "wrap", gap: "0.5rem" }}>
        <LinkButton to="/cars/$vehicle/brief" params={{ vehicle }}>
          {t("step.book.brief")}
        </LinkButton>
        <LinkButton variant="default" to="/cars/$vehicle/hours" params={{ vehicle }}>
          {t("step.book.hours")}
        </LinkButton>
      </div>
    </Step>
  );
};

export const AskStep = ({ vehicle }: Props) => {
  const t = useText();
  return (
    <Step title={t("step.ask")}>
      <p>{t("step.ask.what")}</p>
      <div style={{ display: "flex", flexWrap: "wrap", gap: "0.5rem" }}>
        <LinkButton variant="default" to="/cars/$vehicle/ask" params={{ vehicle }}>
          {t("questions.ask")}
        </LinkButton>
        <LinkButton variant="subtle" to="/questions" search={{ vehicle }}>
          {t("step.ask.list")}
        </LinkButton>
      </div>
    </Step>
  );
};

/** The dealer's way to links, withdrawing with a reason, and where the car stands. */
export const PublishingStep = ({ vehicle }: Props) => {
  const t = useText();
  return (
    <Step title={t("step.publishing")}>
      <p>{t("step.publishing.what")}</p>
      <LinkButton variant="default" to="/cars/$vehicle/listing" params={{ vehicle }}>
        {t("step.publishing.do")}
      </LinkButton>
    </Step>
  );
};
