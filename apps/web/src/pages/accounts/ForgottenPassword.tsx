import { Button } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Form } from "../../ui/Form";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { EmailField } from "../../features/accounts/EmailField";
import { EntryPage } from "../../features/accounts/EntryPage";

/** That it was asked; whether the address has an account is not said. */
const Asked = () => {
  const t = useText();
  return (
    <div aria-live="polite">
      <Notice kind="note" title={t("forgotten.asked")}>
        <p>{t("forgotten.asked.what")}</p>
      </Notice>
    </div>
  );
};

const AskForLetter = () => {
  const t = useText();
  const [email, setEmail] = useState("");
  const ask = useMutation({
    mutationFn: () => call("passwordResets.request", { body: { email: email.trim() } }),
  });
  return (
    <Panel>
      {ask.isSuccess && <Asked />}
      <Form error={ask.error} onSubmit={() => ask.mutate()}>
        <EmailField own value={email} onChange={setEmail} />
        <Button type="submit" size="md" loading={ask.isPending}>
          {t(ask.isSuccess ? "forgotten.again" : "forgotten.do")}
        </Button>
      </Form>
    </Panel>
  );
};

/** Asks for a letter with a link to a new password. What it says is the same whether the address has an account or not. */
export const ForgottenPassword = () => {
  const t = useText();
  return (
    <EntryPage title={t("forgotten.title")} under={t("forgotten.what")}>
      <AskForLetter />
      <div>
        <LinkButton variant="subtle" to="/sign-in" search={{}}>
          {t("forgotten.back")}
        </LinkButton>
      </div>
    </EntryPage>
  );
};
