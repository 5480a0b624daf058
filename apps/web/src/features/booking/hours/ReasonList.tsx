import type { RefusedHourBody } from "@evenhand/shared/http/booking";

interface Props {
  readonly reasons: readonly RefusedHourBody[];
  readonly say: (reason: RefusedHourBody) => string;
}

/** What is in the way of an hour, line by line. */
export const ReasonList = ({ reasons, say }: Props) => (
  <ul>
    {reasons.map((reason) => (
      <li key={reason.code}>{say(reason)}</li>
    ))}
  </ul>
);
