import { answer } from "./en/answer";
import { accounts } from "./en/accounts";
import { costs } from "./en/costs";
import { comparison } from "./en/comparison";
import { decisions } from "./en/decisions";
import { disputes } from "./en/disputes";
import { figures } from "./en/figures";
import { general } from "./en/general";
import { sheets } from "./en/sheets";
import { terms } from "@evenhand/wording/terms";
import { vehicles } from "./en/vehicles";
import { appointments } from "./en/appointments";
import { beforeMoney } from "./en/before-money";
import { booking } from "./en/booking";
import { brief } from "./en/brief";
import { calendars } from "./en/calendars";
import { cases } from "./en/cases";
import { admissions } from "./en/admissions";
import { complaints } from "./en/complaints";
import { publishing } from "./en/publishing";
import { evidence } from "./en/evidence";
import { questions } from "./en/questions";
import { handOvers } from "./en/hand-overs";
import { handbook } from "./en/handbook";
import { instruments } from "./en/instruments";
import { readings } from "./en/readings";
import { records } from "./en/records";
import { notices } from "./en/notices";
import { money } from "./en/money";
import { walk } from "./en/walk";

/** American English, the first catalog. Another language is another file of the same shape. */
export const en = {
  ...general,
  ...terms,
  ...accounts,
  ...vehicles,
  ...cases,
  ...sheets,
  ...comparison,
  ...answer,
  ...figures,
  ...decisions,
  ...handOvers,
  ...disputes,
  ...costs,
  ...appointments,
  ...booking,
  ...brief,
  ...calendars,
  ...admissions,
  ...complaints,
  ...publishing,
  ...questions,
  ...handbook,
  ...instruments,
  ...readings,
  ...records,
  ...money,
  ...notices,
  ...beforeMoney,
  ...walk,
  ...evidence,
} as const;

export type MessageId = keyof typeof en;
