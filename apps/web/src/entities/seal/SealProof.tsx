import type { SealReceipt } from "@evenhand/shared/chain";
import { Button } from "@mantine/core";
import { IconDownload } from "@tabler/icons-react";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { type DocumentRoute, receiptQuery, takeAway } from "./queries";
import { NotAsSealed } from "./sealed-file";
import styles from "./SealProof.module.css";

interface Props {
  readonly id: string;
  readonly seal: string;
  readonly of: DocumentRoute;
  /** What this person is shown is not yet what was sealed. */
  readonly withheld?: boolean;
}

const NotTaken = ({ error }: { readonly error: Error }) => {
  const t = useText();
  if (!(error instanceof NotAsSealed)) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={t("proof.other")}>
      <p>{t("proof.other.what")}</p>
    </Notice>
  );
};

const TakeAway = ({ of, receipt }: Pick<Props, "of"> & { readonly receipt: SealReceipt }) => {
  const t = useText();
  const take = useMutation({ mutationFn: () => takeAway(of, receipt) });
  return (
    <div className="no-print">
      <Button
        variant="default"
        size="sm"
        leftSection={<IconDownload size={18} aria-hidden="true" />}
        loading={take.isPending}
        onClick={() => take.mutate()}
      >
        {t("proof.download")}
      </Button>
      <p className={styles.aside}>{t("proof.download.what")}</p>
      {take.error !== null && <NotTaken error={take.error} />}
    </div>
  );
};

/** What the receipt says, or that there is none, or that it could not be asked for. */
const Receipt = ({ receipt }: { readonly receipt: SealReceipt | null }) => {
  const t = useText();
  const intl = useIntl();
  if (receipt === null) return <p>{t("proof.none")}</p>;
  const { size, key, at } = receipt;
  return (
    <p>
      {t("proof.receipt", { size, key, at: intl.formatDate(at, { dateStyle: "long", timeStyle: "short" }) })}
    </p>
  );
};

/** How what was sealed is known again, and taking it away to be checked where this service has no hand in it. */
export const SealProof = ({ id, seal, of, withheld = false }: Props) => {
  const t = useText();
  const { data: receipt, error } = useQuery(receiptQuery(id));
  return (
    <div className={styles.proof}>
      <p className={styles.seal}>{t("proof.seal", { seal })}</p>
      {receipt !== undefined && <Receipt receipt={receipt} />}
      {receipt === undefined && error !== null && <p>{t("proof.unknown")}</p>}
      {receipt && withheld && <p>{t("proof.withheld")}</p>}
      {receipt && !withheld && <TakeAway of={of} receipt={receipt} />}
    </div>
  );
};
