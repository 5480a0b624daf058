import { Button } from "@mantine/core";
import type { FormEvent, ReactNode } from "react";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Calendars.module.css";
import type { FieldShown } from "./fields";
import { TrialWeek } from "./TrialWeek";
import { hoursOf, type HoursTyped } from "./weekly-hours";
import { WrongFields } from "./WrongFields";

interface Props {
  readonly form: {
    readonly typed: { readonly hours: HoursTyped };
    readonly touched: boolean;
    readonly wrong: readonly FieldShown[];
    readonly error: Error | null;
    readonly isPending: boolean;
    readonly isSaved: boolean;
    readonly submit: (event: FormEvent) => void;
  };
  readonly button: string;
  /** The week as it is stored: beside the form until something is typed. */
  readonly stored?: ReactNode;
  readonly below?: ReactNode;
  readonly children: ReactNode;
}

/** An inspector's time or a site being entered, with the week its hours make beside it. */
export const TypedForm = ({ form, button, stored, below, children }: Props) => {
  const t = useText();
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <form className={styles.stack} onSubmit={form.submit}>
          {children}
          <WrongFields fields={form.wrong} />
          {form.error !== null && <ProblemNotice error={form.error} />}
          <div className={styles.buttons}>
            <Button type="submit" size="md" loading={form.isPending}>
              {button}
            </Button>
            <span aria-live="polite">{form.isSaved && t("calendar.saved")}</span>
          </div>
        </form>
        {below}
      </div>
      <div className={styles.side}>
        {form.touched || stored === undefined ? <TrialWeek hours={hoursOf(form.typed.hours)} /> : stored}
      </div>
    </div>
  );
};
