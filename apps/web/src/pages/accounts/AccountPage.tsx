import { Button, Checkbox } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
import { PasswordField } from "../../features/accounts/PasswordField";
import { useAccount } from "../../entities/account/queries";
import { useLeave } from "../../features/accounts/use-leave";

/** What the service says of one field, to stand at that field. */
const reasonAt = (error: unknown, at: string): string | undefined =>
  error instanceof Refusal ? error.problem.problems?.find((problem) => problem.at === at)?.reason : undefined;

const ChangePassword = () => {
  const t = useText();
  const [current, setCurrent] = useState("");
  const [next, setNext] = useState("");
  const change = useMutation({
    mutationFn: () => call("account.changePassword", { body: { current, next } }),
    onSuccess: () => {
      setCurrent("");
      setNext("");
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    change.mutate();
  };
  return (
    <Panel title={t("account.password.title")} hint={t("account.password.what")}>
      <form className={styles.form} onSubmit={submit}>
        {change.error !== null && <ProblemNotice error={change.error} />}
        {change.isSuccess && (
          <div aria-live="polite">
            <Notice kind="note" title={t("account.password.done")} />
          </div>
        )}
        <PasswordField
          kind="current"
          label={t("account.password.current")}
          value={current}
          onChange={setCurrent}
          error={reasonAt(change.error, "/current")}
        />
        <PasswordField
          kind="new"
          label={t("new-password.field")}
          value={next}
          onChange={setNext}
          error={reasonAt(change.error, "/next")}
        />
        <div>
          <Button type="submit" size="md" loading={change.isPending}>
            {t("account.password.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};

const CloseAccount = ({ account }: { readonly account: string }) => {
  const t = useText();
  const { leave, question } = useLeave(account, true);
  const [password, setPassword] = useState("");
  const [isSure, setIsSure] = useState(false);
  const close = useMutation({
    mutationFn: () => leave(() => call("account.close", { body: { password } })),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    close.mutate();
  };
  return (
    <Panel title={t("account.close.title")} hint={t("account.close.what")}>
      <form className={styles.form} onSubmit={submit}>
        {close.error !== null && <ProblemNotice error={close.error} />}
        <PasswordField
          kind="current"
          label={t("account.close.password")}
          value={password}
          onChange={setPassword}
          error={reasonAt(close.error, "/password")}
        />
        <Checkbox
          size="md"
          label={t("account.close.sure")}
          checked={isSure}
          required
          onChange={(event) => setIsSure(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" variant="default" disabled={!isSure} loading={close.isPending}>
            {t("account.close.do")}
          </Button>
        </div>
      </form>
      {question}
    </Panel>
  );
};

/** The person's own account: the password, the devices, and the end of it. */
export const AccountPage = () => {
  const t = useText();
  const account = useAccount();
  if (!account) return null;
  return (
    <Page
      title={t("account.title")}
      under={t("account.for", { name: account.name, email: account.email })}
      actions={
        <LinkButton variant="default" to="/sessions">
          {t("nav.sessions")}
        </LinkButton>
      }
      narrow
    >
      <ChangePassword />
      <CloseAccount account={account.id} />
    </Page>
  );
};
