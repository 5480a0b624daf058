import { Button, NativeSelect, Radio, Textarea, TextInput } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { placesFor, type Place } from "../../entities/sheet/places";
import { capital, searchWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import styles from "../../features/questions/Questions.module.css";

const route = getRouteApi("/signed-in/cars/$vehicle/ask");
const SHOWN = 8;

interface PlaceChoice {
  readonly item: string;
  readonly position: string;
}

interface ChooserProps {
  readonly places: readonly Place[];
  readonly index: SheetIndex;
  readonly value: PlaceChoice;
  readonly onChange: (value: PlaceChoice) => void;
}

/** Finds an item by any word for it, then the position on it. */
const ItemChooser = ({ places, index, value, onChange }: ChooserProps) => {
  const t = useText();
  const [q, setQ] = useState("");
  const items = [...new Map(places.map(({ item }) => [item.id, item])).values()];
  const words = q.trim().toLowerCase().split(/\s+/);
  const found =
    q.trim() === ""
      ? items.filter(({ id }) => id === value.item)
      : items.filter(({ words: own }) => words.every((word) => searchWords(own).includes(word)));
  const positions = places.filter(({ item }) => item.id === value.item);
  const choose = (item: string): void =>
    onChange({ item, position: places.find((place) => place.item.id === item)?.position ?? "" });
  return (
    <>
      <TextInput
        type="search"
        size="md"
        label={t("questions.item.search")}
        description={t("questions.item.hint")}
        value={q}
        onChange={(event) => setQ(event.currentTarget.value)}
      />
      {q.trim() !== "" && found.length === 0 && <p aria-live="polite">{t("questions.item.none")}</p>}
      {found.length > 0 && (
        <Radio.Group label={t("questions.item")} value={value.item} onChange={choose}>
          <div className={styles.form} style={{ gap: "0.6rem", paddingTop: "0.5rem" }}>
            {found.slice(0, SHOWN).map((item) => (
              <Radio
                key={item.id}
                size="md"
                value={item.id}
                label={capital(item.words.american)}
                description={capital(index.sections.get(item.section)?.words.american ?? "")}
              />
            ))}
          </div>
        </Radio.Group>
      )}
      {positions.length > 1 && (
        <NativeSelect
          size="md"
          label={t("questions.position")}
          value={value.position}
          data={positions.map(({ position, words: label }) => ({ value: position, label }))}
          onChange={(event) => onChange({ ...value, position: event.currentTarget.value })}
        />
      )}
    </>
  );
};

const AskForm = ({ car, index }: { readonly car: VehicleDetail; readonly index: SheetIndex }) => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = route.useNavigate();
  const search = route.useSearch();
  const [place, setPlace] = useState<PlaceChoice>({
    item: search.item ?? "",
    position: search.position ?? "",
  });
  const [text, setText] = useState("");
  const [tried, setTried] = useState(false);
  const ask = useMutation({
    mutationFn: (send: boolean) =>
      call("questions.create", {
        params: { id: car.id },
        body: { ...place, text: text.trim(), send },
      }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["questions"] });
      await navigate({ to: "/questions/$question", params: { question: id } });
    },
  });
  const put = (send: boolean): void => {
    setTried(true);
    if (place.item !== "" && text.trim() !== "") ask.mutate(send);
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    put(true);
  };
  return (
    <form className={styles.form} onSubmit={submit}>
      {ask.error !== null && <ProblemNotice error={ask.error} />}
      <ItemChooser
        places={placesFor(index, car.vehicle.form)}
        index={index}
        value={place}
        onChange={setPlace}
      />
      {tried && place.item === "" && <p role="alert">{t("questions.item.needed")}</p>}
      <Textarea
        size="md"
        autosize
        minRows={3}
        required
        withAsterisk={false}
        maxLength={2000}
        label={t("questions.text")}
        description={t("questions.text.hint")}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      <div className={styles.buttons}>
        <Button type="submit" size="md" loading={ask.isPending && ask.variables}>
          {t("questions.send")}
        </Button>
        <Button
          variant="default"
          size="md"
          loading={ask.isPending && !ask.variables}
          onClick={() => put(false)}
        >
          {t("questions.keep")}
        </Button>
      </div>
      <p className={styles.hint}>{t("questions.draft.note")}</p>
    </form>
  );
};

/** A buyer asks the dealer about one item. */
export const AskQuestion = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle } = route.useParams();
  const car = useQuery(carQuery(vehicle));
  const index = useQuery(sheetQuery("evenhand", 1));
  const error = car.error ?? index.error;
  if (error) {
    return (
      <Page title={t("questions.ask.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!car.data || !index.data) return <Loading />;
  return (
    <Page
      title={t("questions.ask.title")}
      under={t("questions.ask.under")}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {name(car.data.vehicle)}
        </Link>
      }
      narrow
    >
      <Panel>
        <AskForm car={car.data} index={index.data} />
      </Panel>
    </Page>
  );
};
