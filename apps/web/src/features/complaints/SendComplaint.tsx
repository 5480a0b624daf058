import { Button, NativeSelect, Textarea } from "@mantine/core";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { appointmentsQuery } from "../../entities/appointment/queries";
import { useTimes } from "../../entities/time/use-times";
import { oneOf } from "../../service/one-of";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import styles from "./Complaints.module.css";

const kinds = ["appointment", "vehicle", "other"] as const;
type Kind = (typeof kinds)[number];

/** What a complaint can be about, by name. */
const useSubjects = (kind: Kind) => {
  const name = useCarName();
  const times = useTimes();
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  const visits = useInfiniteQuery(appointmentsQuery()).data ?? [];
  if (kind === "vehicle") return cars.map((car) => ({ value: car.id, label: name(car) }));
  if (kind === "appointment") {
    return visits.map(({ id, start, zone, site }) => ({
      value: id,
      label: `${times.full(start, zone)}, ${site.name}`,
    }));
  }
  return [];
};

export const SendComplaint = () => {
  const t = useText();
  const queries = useQueryClient();
  const account = useAccount();
  const organizations = account?.memberships.map(({ organization }) => organization) ?? [];
  const [organization, setOrganization] = useState(organizations[0]?.id ?? "");
  const [kind, setKind] = useState<Kind>("appointment");
  const [chosen, setChosen] = useState("");
  const [text, setText] = useState("");
  const subjects = useSubjects(kind);
  const id = chosen === "" ? (subjects[0]?.value ?? null) : chosen;
  const send = useMutation({
    mutationFn: () =>
      call("complaints.create", {
        body: { organization, about: { kind, id: kind === "other" ? null : id }, text: text.trim() },
      }),
    onSuccess: async () => {
      setText("");
      await queries.invalidateQueries({ queryKey: ["complaints"] });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    send.mutate();
  };
  return (
    <Panel title={t("complaint.send.title")}>
      <form className={styles.form} onSubmit={submit}>
        <Notice kind="caution">
          <p>{t("complaint.send.what")}</p>
        </Notice>
        {send.error !== null && <ProblemNotice error={send.error} />}
        <p aria-live="polite">{send.isSuccess && t("complaint.sent")}</p>
        <div className={styles.fields}>
          {organizations.length > 1 && (
            <NativeSelect
              size="md"
              label={t("complaint.send.organization")}
              value={organization}
              data={organizations.map(({ id: value, name }) => ({ value, label: name }))}
              onChange={(event) => setOrganization(event.currentTarget.value)}
            />
          )}
          <NativeSelect
            size="md"
            label={t("complaint.send.about")}
            value={kind}
            data={kinds.map((value) => ({ value, label: t(`complaint.about.${value}`) }))}
            onChange={({ currentTarget }) => {
              setKind(oneOf(kinds, currentTarget.value) ?? kind);
              setChosen("");
            }}
          />
          {kind !== "other" && subjects.length > 0 && (
            <NativeSelect
              size="md"
              label={t(kind === "appointment" ? "complaint.send.visit" : "complaint.send.car")}
              value={id ?? ""}
              data={subjects}
              onChange={(event) => setChosen(event.currentTarget.value)}
            />
          )}
        </div>
        <Textarea
          size="md"
          autosize
          minRows={4}
          required
          withAsterisk={false}
          maxLength={10_000}
          label={t("complaint.send.text")}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <div>
          <Button type="submit" size="md" loading={send.isPending}>
            {t("complaint.send.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
