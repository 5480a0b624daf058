import { Button } from "@mantine/core";
import type { HoursRule } from "@evenhand/shared/booking";
import { useText } from "../../strings/text";
import styles from "./Calendars.module.css";

const RuleLine = ({ rule, onRemove }: { readonly rule: HoursRule; readonly onRemove: () => void }) => {
  const t = useText();
  return (
    <li className={styles.other}>
      <span>
        {t("hours-edit.other.line", {
          opens: rule.opens.replace("T", " ").slice(0, 16),
          closes: rule.closes,
          rule: rule.rrule ?? t("hours-edit.other.once"),
        })}
      </span>
      <Button variant="default" size="xs" onClick={onRemove}>
        {t("hours-edit.remove")}
      </Button>
    </li>
  );
};

interface Props {
  readonly rules: readonly HoursRule[];
  readonly onChange: (rules: readonly HoursRule[]) => void;
}

/** Rules another program entered: shown as they are, to be kept or taken out. */
export const OtherRules = ({ rules, onChange }: Props) => {
  const t = useText();
  if (rules.length === 0) return null;
  return (
    <div className={styles.part}>
      <h3>{t("hours-edit.other")}</h3>
      <ul className={styles.plain}>
        {rules.map((rule) => (
          <RuleLine
            key={`${rule.opens}${rule.rrule ?? ""}`}
            rule={rule}
            onRemove={() => onChange(rules.filter((one) => one !== rule))}
          />
        ))}
      </ul>
    </div>
  );
};
