import { Button, Radio } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Car.module.css";
import { inspectorsQuery } from "../../entities/car/queries";
import { Step } from "./Step";

/** A buyer orders an inspection; the statement of this hour is the one it will be set against. */
export const OrderInspection = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const queries = useQueryClient();
  const [inspector, setInspector] = useState("");
  const firms = useInfiniteQuery(inspectorsQuery);
  const [newest] = car.statements;
  const order = useMutation({
    mutationFn: () =>
      call("orders.create", { params: { id: car.id }, body: { inspector, statement: newest?.id ?? "" } }),
    onSuccess: () => queries.invalidateQueries(),
  });
  if (!newest) {
    return (
      <Step title={t("next.order.unstated")}>
        <p>{t("next.order.unstated.what")}</p>
      </Step>
    );
  }
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    order.mutate();
  };
  return (
    <Step title={t("next.order")}>
      <p>{t("next.order.what", { version: newest.version })}</p>
      <form className={styles.form} onSubmit={submit}>
        {order.error !== null && <ProblemNotice error={order.error} />}
        {firms.data === undefined ? (
          <Loading />
        ) : (
          <Radio.Group
            label={t("next.order.inspector")}
            description={t("next.order.inspector.hint")}
            value={inspector}
            onChange={setInspector}
          >
            <div className={styles.form} style={{ gap: "0.75rem", paddingTop: "0.75rem" }}>
              {firms.data.map(({ id, name, place }) => (
                <Radio key={id} size="md" value={id} label={name} description={place} />
              ))}
            </div>
          </Radio.Group>
        )}
        <div>
          <Button type="submit" disabled={inspector === ""} loading={order.isPending}>
            {t("next.order.do")}
          </Button>
        </div>
      </form>
    </Step>
  );
};
