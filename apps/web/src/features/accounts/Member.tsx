import { Button } from "@mantine/core";
import type { Member } from "@evenhand/shared/http/organizations";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText, type Values } from "../../strings/text";
import { Line } from "../../ui/List";
import { Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Accounts.module.css";
import { accountQuery } from "../../entities/account/queries";

interface Props {
  readonly organization: { readonly id: string; readonly name: string };
  readonly member: Member;
  /** Is it the person who looks? */
  readonly isSelf: boolean;
  /** May the person who looks change others? */
  readonly mayChange: boolean;
}

const useMemberChanges = ({ organization, member }: Pick<Props, "organization" | "member">) => {
  const queries = useQueryClient();
  const params = { id: organization.id, account: member.account.id };
  const onSuccess = async (): Promise<void> => {
    await queries.invalidateQueries({ queryKey: ["members", organization.id] });
    await queries.invalidateQueries({ queryKey: ["open-invitations", organization.id] });
    await queries.invalidateQueries({ queryKey: accountQuery.queryKey });
  };
  const role = member.role === "admin" ? "member" : "admin";
  return {
    change: useMutation({
      mutationFn: () => call("members.change", { params, body: { role } }),
      onSuccess,
    }),
    remove: useMutation({ mutationFn: () => call("members.remove", { params }), onSuccess }),
  };
};

type Changes = ReturnType<typeof useMemberChanges>;

/** Raises a member, or lowers an administrator. */
const RoleButton = ({ member, change }: Pick<Props, "member"> & Pick<Changes, "change">) => {
  const t = useText();
  const { name } = member.account;
  const isAdmin = member.role === "admin";
  return (
    <Button
      variant="default"
      size="sm"
      aria-label={t(isAdmin ? "member.lower.of" : "member.raise.of", { name })}
      loading={change.isPending}
      onClick={() => change.mutate()}
    >
      {t(isAdmin ? "member.lower" : "member.raise")}
    </Button>
  );
};

interface RemoveProps {
  readonly isSelf: boolean;
  readonly words: Values;
  readonly asks: boolean;
  readonly onAsk: (asks: boolean) => void;
}

const RemoveButton = ({ isSelf, words, asks, onAsk }: RemoveProps) => {
  const t = useText();
  return (
    <Button
      variant="default"
      size="sm"
      aria-label={t(isSelf ? "member.leave.of" : "member.remove.of", words)}
      aria-expanded={asks}
      onClick={() => onAsk(!asks)}
    >
      {t(isSelf ? "member.leave" : "member.remove")}
    </Button>
  );
};

/** Asked once more, saying what it does. */
const SureToRemove = ({
  isSelf,
  words,
  onAsk,
  remove,
}: Omit<RemoveProps, "asks"> & Pick<Changes, "remove">) => {
  const t = useText();
  return (
    <div className={styles.ask}>
      <p>{t(isSelf ? "member.sure.self" : "member.sure", words)}</p>
      <div className={styles.actions}>
        <Button size="sm" loading={remove.isPending} onClick={() => remove.mutate()}>
          {t(isSelf ? "member.leave.do" : "member.remove.do", words)}
        </Button>
        <Button size="sm" variant="default" onClick={() => onAsk(false)}>
          {t("cancel")}
        </Button>
      </div>
    </div>
  );
};

/** A member, with what may be done about them. */
export const MemberLine = ({ organization, member, isSelf, mayChange }: Props) => {
  const t = useText();
  const [asks, setAsks] = useState(false);
  const { change, remove } = useMemberChanges({ organization, member });
  const { name } = member.account;
  const removing = { isSelf, onAsk: setAsks, words: { name, organization: organization.name } };
  const error = change.error ?? remove.error;
  return (
    <>
      <Line
        main={name}
        sub={member.email}
        end={
          <div className={styles.actions}>
            <Tag>{t(`role.${member.role}`)}</Tag>
            {mayChange && <RoleButton member={member} change={change} />}
            {(mayChange || isSelf) && <RemoveButton {...removing} asks={asks} />}
          </div>
        }
      />
      {asks && <SureToRemove {...removing} remove={remove} />}
      {error !== null && <ProblemNotice error={error} />}
    </>
  );
};
