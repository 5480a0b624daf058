import { Button } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { reasonAt } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { PasswordField } from "./PasswordField";

interface Passwords {
  readonly current: string;
  readonly next: string;
}

const empty: Passwords = { current: "", next: "" };

/** What is typed of the two passwords; emptied once the change is made. */
const useChange = () => {
  const [typed, setTyped] = useState(empty);
  const change = useMutation({
    mutationFn: () => call("account.changePassword", { body: typed }),
    onSuccess: () => setTyped(empty),
  });
  const fieldOf = (name: keyof Passwords) => ({
    value: typed[name],
    error: reasonAt(change.error, `/${name}`),
    onChange: (value: string): void => setTyped((now) => ({ ...now, [name]: value })),
  });
  return { change, fieldOf };
};

/** The password that holds today, and the one that will. */
export const ChangePassword = () => {
  const t = useText();
  const { change, fieldOf } = useChange();
  return (
    <Panel title={t("account.password.title")} hint={t("account.password.what")}>
      <Form error={change.error} onSubmit={() => change.mutate()}>
        {change.isSuccess && (
          <div aria-live="polite">
            <Notice kind="note" title={t("account.password.done")} />
          </div>
        )}
        <PasswordField kind="current" label={t("account.password.current")} {...fieldOf("current")} />
        <PasswordField kind="new" label={t("new-password.field")} {...fieldOf("next")} />
        <div>
          <Button type="submit" size="md" loading={change.isPending}>
            {t("account.password.do")}
          </Button>
        </div>
      </Form>
    </Panel>
  );
};
