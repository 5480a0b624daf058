import type { NewsKind } from "@evenhand/shared/http/notices";

type About = { readonly subject: string; readonly vehicle: string };

const order = ({ subject }: About) => `/orders/${subject}`;
const appointment = ({ subject }: About) => `/appointments/${subject}`;
const question = ({ subject }: About) => `/questions/${subject}`;
const handOver = ({ subject }: About) => `/hand-overs/${subject}`;
const released = ({ vehicle }: About) => `/released?vehicle=${vehicle}`;
const decisions = () => "/decisions";

/** The page of the site that each piece of news is about, as the web application's own `newsPlaces` has it; a test holds them together. */
export const newsPaths: Readonly<Record<NewsKind, (about: About) => string>> = {
  "order-received": order,
  "order-accepted": order,
  "order-declined": order,
  "order-cancelled": order,
  "inspection-sealed": ({ subject }) => `/comparisons/${subject}`,
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
};
