import { Button, NativeSelect, NumberInput, TextInput } from "@mantine/core";
import { useForm } from "@mantine/form";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { Currency } from "@evenhand/shared/currency";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText, type Text } from "../../strings/text";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { organizationsOf, useAccount } from "../../entities/account/queries";
import styles from "../../features/vehicles/Car.module.css";
import { CarFormFields } from "../../features/vehicles/CarFormFields";
import { firstValues, problemsOf, vehicleOf, type NewCarValues } from "../../features/vehicles/new-car";

/** The problems in words, as the form shows them at their fields. */
const wordsOf = (problems: ReturnType<typeof problemsOf>, t: Text): Record<string, string> =>
  Object.fromEntries(Object.entries(problems).map(([field, id]) => [field, t(id)]));

const useNewCar = () => {
  const t = useText();
  const navigate = useNavigate();
  const queries = useQueryClient();
  const firms = organizationsOf(useAccount(), "dealer");
  const form = useForm<NewCarValues>({
    initialValues: { ...firstValues, organization: firms[0]?.id ?? "" },
    validate: (values) => wordsOf(problemsOf(values), t),
  });
  const create = useMutation({
    mutationFn: (values: NewCarValues) => call("vehicles.create", { body: vehicleOf(values) }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      await navigate({ to: "/cars/$vehicle", params: { vehicle: id } });
    },
  });
  return { firms, form, create };
};
type NewCarForm = ReturnType<typeof useNewCar>;

const useFields = (form: NewCarForm["form"]) => {
  const t = useText();
  return (name: "make" | "model" | "identification" | "market" | "words") => ({
    size: "md" as const,
    label: t(`new-car.${name}`),
    ...form.getInputProps(name),
  });
};

type FormProps = Pick<NewCarForm, "form">;

/** For which firm, where the person acts for more than one. */
const FirmChoice = ({ firms, form }: Omit<NewCarForm, "create">) => {
  const t = useText();
  if (firms.length <= 1) return null;
  return (
    <NativeSelect
      size="md"
      label={t("new-car.organization")}
      data={firms.map(({ id, name }) => ({ value: id, label: name }))}
      {...form.getInputProps("organization")}
    />
  );
};

const YearField = ({ form }: FormProps) => {
  const t = useText();
  return (
    <NumberInput
      size="md"
      label={t("new-car.modelYear")}
      min={1886}
      max={2100}
      hideControls
      {...form.getInputProps("modelYear")}
    />
  );
};

const codes = Intl.supportedValuesOf("currency").filter((code) => Currency.safeParse(code).success);

const AskingFields = ({ form }: FormProps) => {
  const t = useText();
  const { formatDisplayName } = useIntl();
  const nameOf = (code: string): string => formatDisplayName(code, { type: "currency" }) ?? code;
  return (
    <>
      <TextInput
        size="md"
        inputMode="decimal"
        label={t("new-car.asking")}
        {...form.getInputProps("asking")}
      />
      <NativeSelect
        size="md"
        label={t("new-car.currency")}
        data={[
          { value: "", label: t("form.choose") },
          ...codes.map((code) => ({
            value: code,
            label: t("new-car.currency.of", { code, name: nameOf(code) }),
          })),
        ]}
        {...form.getInputProps("currency")}
      />
    </>
  );
};

/** Which car it is, where it was sold, and what is asked for it. */
const Identity = ({ firms, form }: Omit<NewCarForm, "create">) => {
  const t = useText();
  const text = useFields(form);
  return (
    <div className={styles.fields}>
      <FirmChoice firms={firms} form={form} />
      <TextInput {...text("make")} />
      <TextInput {...text("model")} />
      <YearField form={form} />
      <TextInput
        {...text("identification")}
        description={t("new-car.identification.hint")}
        autoCapitalize="characters"
        spellCheck={false}
      />
      <TextInput {...text("market")} />
      <AskingFields form={form} />
    </div>
  );
};

const NewCarFields = ({ firms, form, create }: NewCarForm) => {
  const t = useText();
  const text = useFields(form);
  return (
    <form className={styles.form} onSubmit={form.onSubmit((values) => create.mutate(values))}>
      {create.error !== null && <ProblemNotice error={create.error} />}
      <Panel title={t("new-car.name")}>
        <Identity firms={firms} form={form} />
        <TextInput {...text("words")} description={t("new-car.words.hint")} maxLength={400} />
      </Panel>
      <Panel title={t("new-car.form")} hint={t("new-car.form.hint")}>
        <div className={styles.fields}>
          <CarFormFields form={form} />
        </div>
      </Panel>
      <div className={styles.buttons}>
        <Button type="submit" size="md" loading={create.isPending}>
          {t("new-car.do")}
        </Button>
      </div>
    </form>
  );
};

/** The form a car is entered with. */
export const NewCar = () => {
  const t = useText();
  const made = useNewCar();
  return (
    <Page
      title={t("new-car.title")}
      under={t("new-car.what")}
      over={<Link to="/cars">{t("nav.cars")}</Link>}
      narrow
    >
      <NewCarFields {...made} />
    </Page>
  );
};
