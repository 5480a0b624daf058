import type { DeadlineStep } from "@evenhand/shared/http/cases";

const appointment = (about: string) => `/appointments/${about}`;
const released = (about: string) => `/released?vehicle=${about}`;
const decisions = () => "/decisions";

/** The page of the site where each step is taken, as the web application's own `stepPlaces` has it; a test holds them together. */
export const stepPaths: Readonly<Record<DeadlineStep, (about: string) => string>> = {
  "request-hour": appointment,
  "accept-hour": appointment,
  "give-access": appointment,
  "answer-items": released,
  "answer-contest": released,
  "answer-remedy": released,
  "answer-dispute": released,
  "revise-report": released,
  "book-look": released,
  "do-remedy": released,
  "check-remedy": released,
  "answer-counter": decisions,
  "answer-offer": decisions,
};
