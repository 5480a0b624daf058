import type { UnsealedDraft } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import styles from "./Cases.module.css";
import { SpineLine } from "./Waiting";

/** A report of one's own that is not sealed: no case has it, since nobody else reads it. */
export const DraftLine = ({ draft }: { readonly draft: UnsealedDraft }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { id, kind, car, version, changedAt } = draft;
  const changed = t("case.draft.changed", { date: intl.formatDate(changedAt, { dateStyle: "medium" }) });
  return (
    <SpineLine
      whose="yours"
      time=""
      title={
        <Link to="/cars/$vehicle" params={{ vehicle: car.id }}>
          {name(car)}
        </Link>
      }
      press={
        <LinkButton variant="filled" to="/reports/$report" params={{ report: id }}>
          {t("case.step.seal.do")}
        </LinkButton>
      }
    >
      <p>{version === null ? t("case.draft.first", { kind }) : t("case.draft.again", { kind, version })}</p>
      <p className={styles.aside}>
        {car.identification} · {changed}
      </p>
    </SpineLine>
  );
};
