import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { TermField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Accounts.module.css";
import { EmailField } from "./EmailField";

const roles = ["member", "admin"] as const;

const useInvite = (organization: string) => {
  const queries = useQueryClient();
  const [email, setEmail] = useState("");
  const [role, setRole] = useState<(typeof roles)[number]>("member");
  const invite = useMutation({
    mutationFn: () => call("invitations.create", { body: { email: email.trim(), organization, role } }),
    onSuccess: async () => {
      setEmail("");
      await queries.invalidateQueries({ queryKey: ["open-invitations", organization] });
    },
  });
  return { email, setEmail, role, setRole, invite };
};

/** Sends somebody a letter with a link by which they join. */
export const Invite = ({ organization }: { readonly organization: string }) => {
  const t = useText();
  const { email, setEmail, role, setRole, invite } = useInvite(organization);
  return (
    <Form onSubmit={() => invite.mutate()}>
      <h3>{t("organization.invite")}</h3>
      {invite.error !== null && <ProblemNotice error={invite.error} />}
      {invite.isSuccess && <Notice kind="note" title={t("organization.invited")} />}
      <div className={styles.row}>
        <EmailField value={email} onChange={setEmail} />
        <TermField
          label={t("organization.role")}
          value={role}
          terms={roles}
          wordFor={(term) => t(`role.${term}`)}
          onChange={setRole}
        />
        <Button type="submit" size="md" loading={invite.isPending}>
          {t("organization.invite.do")}
        </Button>
      </div>
    </Form>
  );
};
