import type { NewsKind, Notice } from "@evenhand/shared/http/notices";
import { linkOptions } from "@tanstack/react-router";
import { stepPlaces } from "../../entities/case/step-places";

type About = Pick<Notice, "subject" | "vehicle">;

const order = ({ subject }: About) => linkOptions({ to: "/orders/$order", params: { order: subject } });
const appointment = ({ subject }: About) =>
  linkOptions({ to: "/appointments/$appointment", params: { appointment: subject } });
const question = ({ subject }: About) =>
  linkOptions({ to: "/questions/$question", params: { question: subject } });
const handOver = ({ subject }: About) =>
  linkOptions({ to: "/hand-overs/$handOver", params: { handOver: subject } });
const released = ({ vehicle }: About) => linkOptions({ to: "/released", search: { vehicle } });
const decisions = (_about: About) => linkOptions({ to: "/decisions" });

/** The page that each piece of news is about; letters lead there too. */
export const newsPlaces = {
  "order-received": order,
  "order-accepted": order,
  "order-declined": order,
  "order-cancelled": order,
  "inspection-sealed": ({ subject }: About) =>
    linkOptions({ to: "/comparisons/$comparison", params: { comparison: subject } }),
  "items-released": released,
  "release-answered": released,
  "settlement-moved": released,
  "settlement-asked": released,
  "decision-made": decisions,
  "counter-answered": decisions,
  "offer-answered": decisions,
  "offer-withdrawn": decisions,
  "offer-lapsed": decisions,
  "appointment-requested": appointment,
  "appointment-accepted": appointment,
  "appointment-declined": appointment,
  "appointment-confirmed": appointment,
  "appointment-rescheduled": appointment,
  "appointment-cancelled": appointment,
  "appointment-missed": appointment,
  "appointment-expired": appointment,
  "brief-proposed": appointment,
  "brief-answered": appointment,
  "question-asked": question,
  "question-answered": question,
  "car-collected": handOver,
  "car-delivered": handOver,
} as const satisfies Record<NewsKind, (about: About) => object>;

/** Where a notice leads. Of the oldest reminders only the car is known. */
export const placeOf = (notice: Notice) => {
  if (notice.kind !== "deadline-near") return newsPlaces[notice.kind](notice);
  if (notice.step !== null) return stepPlaces[notice.step](notice.subject);
  return linkOptions({ to: "/cars/$vehicle", params: { vehicle: notice.vehicle } });
};
