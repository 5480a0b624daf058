import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import styles from "./HandOvers.module.css";
import { InviteCarrier } from "./InviteCarrier";
import { handOversQuery } from "./queries";

/** The last stage of a case: who carries the car, and where that stands. Nothing before it is bought. */
export const CollectPart = ({ caseId, by }: { readonly caseId: string; readonly by: "buyer" | "dealer" }) => {
  const t = useText();
  const { data } = useQuery(handOversQuery(caseId));
  if (data === undefined) return null;
  return (
    <section className={styles.stack}>
      <h2>{t("hand-over.section")}</h2>
      {data.items.length === 0 && <p>{t("hand-over.none")}</p>}
      <ul className={styles.lines}>
        {data.items.map(({ id, carrier, state }) => (
          <li key={id}>
            {carrier}: {t(`hand-over.state.${state}`)} ·{" "}
            <Link to="/hand-overs/$handOver" params={{ handOver: id }}>
              {t("hand-over.open")}
            </Link>
          </li>
        ))}
      </ul>
      {by === "buyer" && <InviteCarrier caseId={caseId} open={data.mayArrange} />}
    </section>
  );
};
