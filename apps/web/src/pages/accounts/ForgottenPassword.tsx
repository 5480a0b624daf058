import { Button, TextInput } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";

/** Asks for a letter with a link to a new password. What it says is the same whether the address has an account or not. */
export const ForgottenPassword = () => {
  const t = useText();
  const [email, setEmail] = useState("");
  const ask = useMutation({
    mutationFn: () => call("passwordResets.request", { body: { email: email.trim() } }),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    ask.mutate();
  };
  return (
    <div className={styles.entry}>
      <Page title={t("forgotten.title")} under={t("forgotten.what")} narrow>
        <Panel>
          {ask.isSuccess && (
            <div aria-live="polite">
              <Notice kind="note" title={t("forgotten.asked")}>
                <p>{t("forgotten.asked.what")}</p>
              </Notice>
            </div>
          )}
          <form className={styles.form} onSubmit={submit}>
            {ask.error !== null && <ProblemNotice error={ask.error} />}
            <TextInput
              size="md"
              type="email"
              name="email"
              autoComplete="username"
              label={t("sign-in.email")}
              required
              withAsterisk={false}
              value={email}
              onChange={(event) => setEmail(event.currentTarget.value)}
            />
            <Button type="submit" size="md" loading={ask.isPending}>
              {t(ask.isSuccess ? "forgotten.again" : "forgotten.do")}
            </Button>
          </form>
        </Panel>
        <div>
          <LinkButton variant="subtle" to="/sign-in" search={{}}>
            {t("forgotten.back")}
          </LinkButton>
        </div>
      </Page>
    </div>
  );
};
