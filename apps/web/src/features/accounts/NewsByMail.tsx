import { Button } from "@mantine/core";
import { type NewsChoice, NewsMail } from "@evenhand/shared/http/notices";
import { queryOptions, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { Choices } from "../../entities/answer/Choices";
import { zoneName, zones } from "../../entities/time/zones";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ChoiceField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Accounts.module.css";

const choiceQuery = queryOptions({
  queryKey: ["news-choice"],
  queryFn: ({ signal }) => call("notices.choice", { signal }),
});

/** What stands at the service, and what is pressed but not sent. */
const useChoosing = ({ mail, zone }: NewsChoice) => {
  const queries = useQueryClient();
  const [chosen, setChosen] = useState({ mail, zone });
  const save = useMutation({
    mutationFn: (body: typeof chosen) => call("notices.choose", { body }),
    onSuccess: (saved) => queries.setQueryData(choiceQuery.queryKey, saved),
  });
  const choose = (more: Partial<typeof chosen>): void => {
    setChosen({ ...chosen, ...more });
    save.reset();
  };
  return { chosen, choose, save };
};

interface ZoneProps {
  readonly stands: NewsChoice;
  readonly value: string | null;
  readonly onChange: (zone: string | null) => void;
}

/** On whose clock it is morning: one's own, or that of the organization one joined first. */
const MorningZone = ({ stands: { zone, firmZone }, value, onChange }: ZoneProps) => {
  const t = useText();
  const all = zone === null || zones.includes(zone) ? zones : [zone, ...zones];
  const firm = { value: "", label: t("account.news.zone.firm", { zone: zoneName(firmZone ?? "UTC") }) };
  return (
    <ChoiceField
      label={t("account.news.zone")}
      value={value ?? ""}
      data={[firm, ...all.map((one) => ({ value: one, label: zoneName(one) }))]}
      onChange={(one) => onChange(one === "" ? null : one)}
    />
  );
};

interface SavingProps {
  readonly saved: NewsMail | undefined;
  readonly pending: boolean;
}

/** What comes in any case, the button, and that it was done. */
const Saving = ({ saved, pending }: SavingProps) => {
  const t = useText();
  return (
    <>
      <p className={styles.aside}>{t("account.news.always")}</p>
      <div aria-live="polite">
        {saved !== undefined && <Notice kind="note" title={t("account.news.done", { mail: saved })} />}
      </div>
      <div>
        <Button type="submit" size="md" loading={pending}>
          {t("account.news.do")}
        </Button>
      </div>
    </>
  );
};

const ChoiceForm = ({ stands }: { readonly stands: NewsChoice }) => {
  const t = useText();
  const { chosen, choose, save } = useChoosing(stands);
  const options = NewsMail.options.map((value) => ({
    value,
    label: t(`account.news.${value}`),
    hint: t(`account.news.${value}.what`),
  }));
  return (
    <Form error={save.error} onSubmit={() => save.mutate(chosen)}>
      <Choices
        legend={t("account.news.title")}
        name="news-mail"
        value={chosen.mail}
        options={options}
        onChange={(mail) => choose({ mail })}
        stacked
      />
      {chosen.mail === "daily" && (
        <MorningZone stands={stands} value={chosen.zone} onChange={(zone) => choose({ zone })} />
      )}
      <Saving saved={save.data?.mail} pending={save.isPending} />
    </Form>
  );
};

/** How news comes by mail: as each thing happens, gathered once a day, or not at all. */
export const NewsByMail = () => {
  const t = useText();
  const { data, error } = useQuery(choiceQuery);
  return (
    <Panel title={t("account.news.title")} hint={t("account.news.what")}>
      {error !== null && <ProblemNotice error={error} />}
      {data === undefined ? error === null && <Loading /> : <ChoiceForm stands={data} />}
    </Panel>
  );
};
