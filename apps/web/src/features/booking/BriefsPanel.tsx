import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useState } from "react";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import { useCarName } from "../../entities/car/CarName";
import { ProposeBrief, ProposedBrief, type BriefProps } from "./BriefChange";
import { ItemPicker } from "./ItemPicker";

/** Until when the brief can be changed, or that it cannot. */
const useStanding = ({ appointment, brief }: BriefProps) => {
  const t = useText();
  const times = useTimes();
  const [now] = useState(() => Date.now());
  const inTime = Date.parse(brief.until) > now;
  const isHeld = appointment.state === "held" && inTime;
  const isChangeable = ["requested", "accepted", "confirmed"].includes(appointment.state) && inTime;
  const when = times.full(brief.until, appointment.zone);
  const until = t(isHeld ? "appointment.brief.held" : "appointment.brief.until", { when });
  return { isChangeable, said: isChangeable || isHeld ? until : t("appointment.brief.closed") };
};

/** The car's name beside the title where the visit has several. */
const useTitle = ({ appointment: { cars }, vehicle }: BriefProps): string => {
  const t = useText();
  const name = useCarName();
  const car = cars.find(({ id }) => id === vehicle);
  return cars.length > 1 && car !== undefined
    ? `${t("appointment.brief")}: ${name(car)}`
    : t("appointment.brief");
};

const BriefPanel = (props: BriefProps) => {
  const t = useText();
  const duration = useDuration();
  const title = useTitle(props);
  const { isChangeable, said } = useStanding(props);
  const { appointment, brief } = props;
  return (
    <Panel title={title} hint={said}>
      <p>
        {t("appointment.brief.line", {
          count: brief.items.length,
          time: duration(brief.totals.minutes),
        })}
      </p>
      <details>
        <summary>{t("appointment.brief.show")}</summary>
        <ItemPicker items={brief.items} />
      </details>
      <ProposedBrief {...props} />
      {appointment.as === "buyer" && isChangeable && brief.proposed === null && <ProposeBrief {...props} />}
    </Panel>
  );
};

/** The brief of each car: what is looked at, and changes to it that buyer and inspector agree on. */
export const BriefsPanel = ({ appointment }: { readonly appointment: AppointmentSeen }) =>
  appointment.visits.map(({ vehicle, brief }) =>
    brief === null ? null : (
      <BriefPanel key={vehicle} appointment={appointment} vehicle={vehicle} brief={brief} />
    ),
  );
