import { Button, PasswordInput, TextInput } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link, useNavigate } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
import { becomes } from "../../entities/account/queries";

const route = getRouteApi("/sign-in");

export const SignIn = () => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const { next } = route.useSearch();
  const [email, setEmail] = useState("");
  const [password, setPassword] = useState("");
  const enter = useMutation({
    mutationFn: () => call("sessions.create", { body: { email: email.trim(), password } }),
    onSuccess: async ({ account }) => {
      becomes(queries, account);
      await navigate({ href: next ?? "/" });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    enter.mutate();
  };
  return (
    <div className={styles.entry}>
      <Page title={t("sign-in.title")} under={t("sign-in.what")} narrow>
        <Panel>
          <form className={styles.form} onSubmit={submit}>
            {enter.error !== null && <ProblemNotice error={enter.error} />}
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
            <PasswordInput
              size="md"
              name="password"
              autoComplete="current-password"
              label={t("sign-in.password")}
              visibilityToggleButtonProps={{ "aria-label": t("sign-in.show") }}
              required
              withAsterisk={false}
              value={password}
              onChange={(event) => setPassword(event.currentTarget.value)}
            />
            <Button type="submit" size="md" loading={enter.isPending}>
              {t("sign-in.do")}
            </Button>
          </form>
        </Panel>
        <p>
          <Link to="/forgotten-password">{t("sign-in.forgotten")}</Link>
        </p>
        <p className={styles.aside}>{t("sign-in.invited")}</p>
      </Page>
    </div>
  );
};
