import { Button, Radio, SegmentedControl, Textarea } from "@mantine/core";
import type { AdmissionSeen } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { oneOf } from "../../service/one-of";
import styles from "./Admissions.module.css";
import { admissionsQuery } from "./queries";

const decisions = ["admit", "refuse", "suspend"] as const;
type Decision = (typeof decisions)[number];

/** What makes a difference now: nobody is admitted twice, and only who is admitted is suspended. */
const possible = ({ state }: AdmissionSeen): readonly Decision[] => {
  if (state === "admitted") return ["suspend"];
  return state === "applied" ? ["admit", "refuse"] : ["admit"];
};

const Decide = ({ admission }: { readonly admission: AdmissionSeen }) => {
  const t = useText();
  const queries = useQueryClient();
  const choices = possible(admission);
  const [decision, setDecision] = useState<Decision | "">("");
  const [reason, setReason] = useState("");
  const decide = useMutation({
    mutationFn: (value: Decision) =>
      call("admissions.decide", {
        params: { id: admission.id },
        ifMatch: admission.revision,
        body: { decision: value, reason: reason.trim() },
      }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["admissions"] }),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (decision !== "") decide.mutate(decision);
  };
  return (
    <details>
      <summary>{t("admissions.decide", { name: admission.name })}</summary>
      <form className={styles.form} style={{ padding: "0.75rem 0" }} onSubmit={submit}>
        {decide.error !== null && <ProblemNotice error={decide.error} />}
        <Radio.Group
          label={t("admissions.decision")}
          value={decision}
          onChange={(value) => setDecision(oneOf(decisions, value) ?? "")}
        >
          <div className={styles.buttons} style={{ gap: "1.2rem", paddingTop: "0.4rem" }}>
            {choices.map((value) => (
              <Radio key={value} size="md" value={value} label={t(`admissions.decision.${value}`)} />
            ))}
          </div>
        </Radio.Group>
        <Textarea
          size="md"
          autosize
          maxLength={2000}
          label={t("admissions.reason")}
          description={t("admissions.reason.hint")}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <div>
          <Button type="submit" disabled={decision === "" || reason.trim() === ""} loading={decide.isPending}>
            {t("admissions.do")}
          </Button>
        </div>
      </form>
    </details>
  );
};

/** The operator admits firms and inspectors, each for a reason that is kept. */
export const Admissions = () => {
  const t = useText();
  const intl = useIntl();
  const [all, setAll] = useState(false);
  const admissions = useInfiniteQuery(admissionsQuery(all ? undefined : "applied"));
  const when = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  return (
    <Page title={t("admissions.title")} under={t("admissions.under")} narrow>
      <div>
        <SegmentedControl
          aria-label={t("admissions.show")}
          value={all ? "all" : "applied"}
          onChange={(value) => setAll(value === "all")}
          data={[
            { value: "applied", label: t("admissions.show.applied") },
            { value: "all", label: t("admissions.show.all") },
          ]}
        />
      </div>
      <Panel>
        <List
          query={admissions}
          keyOf={({ id }) => id}
          renderRow={(one) => (
            <>
              <Line
                main={one.name}
                sub={[
                  t(`admissions.kind.${one.kind}`, { firm: one.firm.name }),
                  one.decidedAt === null
                    ? t("admissions.applied", { when: when(one.appliedAt) })
                    : t("admissions.decided", { when: when(one.decidedAt) }),
                  one.reason ?? "",
                ]
                  .filter((part) => part !== "")
                  .join(" · ")}
                end={<Tag strong={one.state === "admitted"}>{t(`admission.${one.state}`)}</Tag>}
              />
              <Decide key={one.revision} admission={one} />
            </>
          )}
          empty={<Empty title={t(all ? "admissions.none.all" : "admissions.none")} />}
        />
      </Panel>
    </Page>
  );
};
