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

interface Props {
  readonly car: VehicleDetail;
}

const useOrder = (car: string, statement: string) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (inspector: string) =>
      call("orders.create", { params: { id: car }, body: { inspector, statement } }),
    onSuccess: () => queries.invalidateQueries(),
  });
};

interface InspectorProps {
  readonly inspector: string;
  readonly onInspector: (inspector: string) => void;
}

const InspectorChoice = ({ inspector, onInspector }: InspectorProps) => {
  const t = useText();
  const firms = useInfiniteQuery(inspectorsQuery);
  if (firms.data === undefined) return <Loading />;
  return (
    <Radio.Group
      label={t("next.order.inspector")}
      description={t("next.order.inspector.hint")}
      value={inspector}
      onChange={onInspector}
    >
      <div className={styles.form} style={{ gap: "0.75rem", paddingTop: "0.75rem" }}>
        {firms.data.map(({ id, name, place }) => (
          <Radio key={id} size="md" value={id} label={name} description={place} />
        ))}
      </div>
    </Radio.Group>
  );
};

const Unstated = () => {
  const t = useText();
  return (
    <Step title={t("next.order.unstated")}>
      <p>{t("next.order.unstated.what")}</p>
    </Step>
  );
};

type Statement = VehicleDetail["statements"][number];

const OrderForm = ({ car, statement }: Props & { readonly statement: Statement }) => {
  const t = useText();
  const [inspector, setInspector] = useState("");
  const order = useOrder(car.id, statement.id);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    order.mutate(inspector);
  };
  return (
    <Step title={t("next.order")}>
      <p>{t("next.order.what", { version: statement.version })}</p>
      <form className={styles.form} onSubmit={submit}>
        {order.error !== null && <ProblemNotice error={order.error} />}
        <InspectorChoice inspector={inspector} onInspector={setInspector} />
        <div>
          <Button type="submit" disabled={inspector === ""} loading={order.isPending}>
            {t("next.order.do")}
          </Button>
        </div>
      </form>
    </Step>
  );
};

/** A buyer orders an inspection; the statement of this hour is the one it will be set against. */
export const OrderInspection = ({ car }: Props) => {
  const [newest] = car.statements;
  return newest ? <OrderForm car={car} statement={newest} /> : <Unstated />;
};
