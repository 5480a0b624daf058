import { Button } from "@mantine/core";
import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import type { BriefItem } from "@evenhand/shared/booking";
import { useState } from "react";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { useItemWords } from "../../entities/sheet/item-words";
import { briefQuery } from "../../entities/appointment/queries";
import styles from "./Booking.module.css";
import { ItemPicker } from "./ItemPicker";
import { MoveProblem } from "./MoveProblem";
import { useMove } from "./use-move";

type Brief = NonNullable<AppointmentSeen["visits"][number]["brief"]>;
export interface BriefProps {
  readonly appointment: AppointmentSeen;
  readonly vehicle: string;
  readonly brief: Brief;
}

type BriefAnswer = "agree" | "refuse" | "withdraw";

const useAnswer = ({ appointment: { id, revision }, vehicle }: BriefProps) =>
  useMove({ id }, (answer: BriefAnswer) =>
    call("appointments.answerBrief", { params: { id }, ifMatch: revision, body: { vehicle, answer } }),
  );

/** The items of one that are not in the other. */
const beyond = (some: readonly BriefItem[], others: readonly BriefItem[]): readonly BriefItem[] => {
  const known = new Set(others.map(({ item }) => item));
  return some.filter(({ item }) => !known.has(item));
};

const useItemList = (): ((items: readonly BriefItem[]) => string) => {
  const intl = useIntl();
  const words = useItemWords();
  return (items) =>
    intl.formatList(
      items.map(({ item }) => words({ item, position: "" })),
      { type: "conjunction" },
    );
};

interface DifferenceProps {
  readonly now: readonly BriefItem[];
  readonly next: readonly BriefItem[];
}

/** What a change would add and leave out. */
const Difference = ({ now, next }: DifferenceProps) => {
  const t = useText();
  const list = useItemList();
  const [added, removed] = [beyond(next, now), beyond(now, next)];
  return (
    <>
      {added.length > 0 && <p>{t("appointment.brief.added", { items: list(added) })}</p>}
      {removed.length > 0 && <p>{t("appointment.brief.removed", { items: list(removed) })}</p>}
    </>
  );
};

/** A change that waits: what it would add and leave out, and who may answer. */
export const ProposedBrief = (props: BriefProps) => {
  const t = useText();
  const answer = useAnswer(props);
  const { appointment, brief } = props;
  if (brief.proposed === null) return null;
  const own = appointment.as === "buyer";
  const answers: readonly BriefAnswer[] = own ? ["withdraw"] : ["agree", "refuse"];
  return (
    <Notice kind="note" title={t(own ? "appointment.brief.proposed.own" : "appointment.brief.proposed")}>
      {answer.error !== null && <MoveProblem error={answer.error} appointment={appointment} />}
      <Difference now={brief.items} next={brief.proposed.items} />
      <div className={styles.buttons}>
        {answers.map((value) => (
          <Button
            key={value}
            variant={value === "agree" ? "filled" : "default"}
            loading={answer.isPending}
            onClick={() => answer.mutate(value)}
          >
            {t(`appointment.brief.${value}`)}
          </Button>
        ))}
      </div>
    </Notice>
  );
};

/** What can be chosen besides the core: all of the car's brief, and what this visit has already. */
const usePickable = ({ vehicle, brief }: BriefProps): readonly BriefItem[] => {
  const whole = useQuery(briefQuery(vehicle)).data;
  const known = [...(whole?.items ?? []), ...(whole?.further ?? []), ...brief.items];
  return [...new Map(known.map((one) => [one.item, one])).values()].filter(({ core }) => !core);
};

const useProposing = ({ appointment: { id, revision }, vehicle, brief }: BriefProps) => {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(brief.items.filter(({ core }) => !core).map(({ item }) => item)),
  );
  const propose = useMove({ id }, () =>
    call("appointments.proposeBrief", {
      params: { id },
      ifMatch: revision,
      body: { vehicle, items: [...chosen] },
    }),
  );
  return { chosen, setChosen, propose };
};

/** The buyer asks for another brief of a visit that is booked. */
export const ProposeBrief = (props: BriefProps) => {
  const t = useText();
  const items = usePickable(props);
  const { chosen, setChosen, propose } = useProposing(props);
  return (
    <details>
      <summary>{t("appointment.brief.change")}</summary>
      <div className={styles.form}>
        <ItemPicker items={items} chosen={chosen} onChange={setChosen} />
        {propose.error !== null && <MoveProblem error={propose.error} appointment={props.appointment} />}
        <div>
          <Button loading={propose.isPending} onClick={() => propose.mutate(undefined)}>
            {t("appointment.brief.propose")}
          </Button>
        </div>
      </div>
    </details>
  );
};
