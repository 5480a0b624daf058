import { Button } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { reasonAt } from "../../service/refusal";
import { useText } from "../../strings/text";
import { TickField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Panel } from "../../ui/Page";
import { PasswordField } from "./PasswordField";
import { useLeave } from "./use-leave";

interface SureProps {
  readonly isSure: boolean;
  readonly pending: boolean;
  readonly onChange: (isSure: boolean) => void;
}

/** Closed only by who said that they are sure. */
const SureToClose = ({ isSure, pending, onChange }: SureProps) => {
  const t = useText();
  return (
    <>
      <TickField label={t("account.close.sure")} checked={isSure} required onChange={onChange} />
      <div>
        <Button type="submit" size="md" variant="default" disabled={!isSure} loading={pending}>
          {t("account.close.do")}
        </Button>
      </div>
    </>
  );
};

/** The end of the account, for good. */
export const CloseAccount = ({ account }: { readonly account: string }) => {
  const t = useText();
  const { leave, question } = useLeave(account, true);
  const [password, setPassword] = useState("");
  const [isSure, setIsSure] = useState(false);
  const close = useMutation({
    mutationFn: () => leave(() => call("account.close", { body: { password } })),
  });
  return (
    <Panel title={t("account.close.title")} hint={t("account.close.what")}>
      <Form error={close.error} onSubmit={() => close.mutate()}>
        <PasswordField
          kind="current"
          label={t("account.close.password")}
          value={password}
          onChange={setPassword}
          error={reasonAt(close.error, "/password")}
        />
        <SureToClose isSure={isSure} pending={close.isPending} onChange={setIsSure} />
      </Form>
      {question}
    </Panel>
  );
};
