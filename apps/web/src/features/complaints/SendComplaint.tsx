import { Button } from "@mantine/core";
import { useText } from "../../strings/text";
import { ChoiceField, LongTextField, TermField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { kinds } from "./complaint-form";
import styles from "./Complaints.module.css";
import { useComplaining } from "./use-complaining";

type Complaining = ReturnType<typeof useComplaining>;

/** For somebody of several organizations. */
const ForWhom = ({ organizations, form, change }: Complaining) => {
  const t = useText();
  if (organizations.length < 2) return null;
  return (
    <ChoiceField
      label={t("complaint.send.organization")}
      value={form.organization}
      data={organizations.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(organization) => change({ organization })}
    />
  );
};

/** The visit or the car that is complained about. */
const Subject = ({ subjects, subject, form, change }: Complaining) => {
  const t = useText();
  if (form.kind === "other" || subjects.length === 0) return null;
  return (
    <ChoiceField
      label={t(form.kind === "appointment" ? "complaint.send.visit" : "complaint.send.car")}
      value={subject ?? ""}
      data={subjects}
      onChange={(chosen) => change({ chosen })}
    />
  );
};

const About = (complaining: Complaining) => {
  const t = useText();
  const { form, change } = complaining;
  return (
    <div className={styles.fields}>
      <ForWhom {...complaining} />
      <TermField
        label={t("complaint.send.about")}
        value={form.kind}
        terms={kinds}
        wordFor={(kind) => t(`complaint.about.${kind}`)}
        onChange={(kind) => change({ kind })}
      />
      <Subject {...complaining} />
    </div>
  );
};

export const SendComplaint = () => {
  const t = useText();
  const complaining = useComplaining();
  const { form, change, send } = complaining;
  return (
    <Panel title={t("complaint.send.title")}>
      <Form onSubmit={() => send.mutate()}>
        <Notice kind="caution">
          <p>{t("complaint.send.what")}</p>
        </Notice>
        {send.error !== null && <ProblemNotice error={send.error} />}
        <p aria-live="polite">{send.isSuccess && t("complaint.sent")}</p>
        <About {...complaining} />
        <LongTextField
          minRows={4}
          required
          maxLength={10_000}
          label={t("complaint.send.text")}
          value={form.text}
          onChange={(text) => change({ text })}
        />
        <div>
          <Button type="submit" size="md" loading={send.isPending}>
            {t("complaint.send.do")}
          </Button>
        </div>
      </Form>
    </Panel>
  );
};
