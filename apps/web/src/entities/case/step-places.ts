import type { CaseStep } from "@evenhand/shared/http/cases";
import { linkOptions } from "@tanstack/react-router";

const question = (subject: string) =>
  linkOptions({ to: "/questions/$question", params: { question: subject } });
const appointment = (subject: string) =>
  linkOptions({ to: "/appointments/$appointment", params: { appointment: subject } });
const order = (subject: string) => linkOptions({ to: "/orders/$order", params: { order: subject } });
const report = (subject: string) => linkOptions({ to: "/reports/$report", params: { report: subject } });
const comparison = (subject: string) =>
  linkOptions({ to: "/comparisons/$comparison", params: { comparison: subject } });

const handOver = (subject: string) =>
  linkOptions({ to: "/hand-overs/$handOver", params: { handOver: subject } });

const released = (subject: string) => linkOptions({ to: "/released", search: { vehicle: subject } });

/** The page where each step is done, for what it is about. */
export const stepPlaces = {
  "choose-brief": (subject: string) =>
    linkOptions({ to: "/cars/$vehicle/brief", params: { vehicle: subject } }),
  book: (subject: string) => linkOptions({ to: "/cars/$vehicle/hours", params: { vehicle: subject } }),
  "send-question": question,
  "answer-question": question,
  "publish-answer": report,
  "request-hour": appointment,
  "accept-hour": appointment,
  "accept-visit": order,
  "give-access": appointment,
  "answer-brief": appointment,
  inspect: appointment,
  "report-visit": appointment,
  "inspect-any-hour": order,
  seal: report,
  read: comparison,
  "answer-items": released,
  "answer-contest": released,
  "answer-remedy": released,
  "do-remedy": released,
  "check-remedy": released,
  "answer-dispute": released,
  "revise-report": released,
  "book-look": released,
  "sum-up": comparison,
  decide: (subject: string) => linkOptions({ to: "/summaries/$summary", params: { summary: subject } }),
  "answer-counter": (_subject: string) => linkOptions({ to: "/decisions" }),
  "answer-offer": (_subject: string) => linkOptions({ to: "/decisions" }),
  "decide-again": comparison,
  "name-carrier": (subject: string) => linkOptions({ to: "/cases/$case", params: { case: subject } }),
  "before-money": (subject: string) =>
    linkOptions({ to: "/cases/$case/before-money", params: { case: subject } }),
  "sign-collection": handOver,
  "sign-delivery": handOver,
  "answer-arrival": handOver,
  "close-claim": handOver,
} as const satisfies Record<CaseStep, (subject: string) => object>;
