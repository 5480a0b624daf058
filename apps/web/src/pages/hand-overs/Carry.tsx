import { Button } from "@mantine/core";
import type { CarriedHandOver, HandOverSigned } from "@evenhand/shared/http/hand-overs";
import { useMutation, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState } from "react";
import { useCarName } from "../../entities/car/CarName";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { ownZone } from "../../entities/time/zone-time";
import { findingsOf } from "../../features/hand-overs/findings";
import { carriedQuery, transportSheetQuery } from "../../features/hand-overs/queries";
import { Compared, SignedReport } from "../../features/hand-overs/Reports";
import { SignReport } from "../../features/hand-overs/SignReport";
import { placesOf, TransportSheet } from "../../features/hand-overs/TransportSheet";
import { useSaid } from "../../features/hand-overs/use-said";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { TextField } from "../../ui/Fields";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const route = getRouteApi("/carry/$token");

interface Props {
  readonly token: string;
  readonly carried: CarriedHandOver;
  readonly index: SheetIndex;
  readonly onSigned: (signed: HandOverSigned) => void;
}

const useReport = ({ token, carried, index }: Props) => {
  const { said, say, place, setPlace, started } = useSaid();
  const look = useMutation({
    mutationFn: async () => {
      const report = {
        stage: carried.stage,
        started,
        ended: new Date().toISOString(),
        zone: ownZone(),
        place: place.trim(),
        findings: findingsOf(said, index.items),
      };
      return { report, preview: await call("carriedHandOvers.preview", { params: { token }, body: report }) };
    },
  });
  return { said, say, place, setPlace, look };
};

/** The sheet, and then what is about to be signed. */
const Sheet = (props: Props) => {
  const t = useText();
  const { token, carried, index, onSigned } = props;
  const { said, say, place, setPlace, look } = useReport(props);
  const places = placesOf(index, carried.vehicle.form);
  if (look.data !== undefined) {
    return (
      <>
        <div>
          <Button variant="default" onClick={() => look.reset()}>
            {t("carry.again")}
          </Button>
        </div>
        <SignReport token={token} stage={carried.stage} {...look.data} onSigned={onSigned} />
      </>
    );
  }
  return (
    <>
      <TextField required label={t("carry.place")} value={place} onChange={setPlace} />
      <TransportSheet index={index} places={places} said={said} onSay={say} />
      {look.error !== null && <ProblemNotice error={look.error} />}
      <p>{t("carry.answered", { answered: Object.keys(said).length, places: places.length })}</p>
      <Button size="lg" loading={look.isPending} disabled={place.trim() === ""} onClick={() => look.mutate()}>
        {t("carry.look")}
      </Button>
    </>
  );
};

const Done = ({ signed }: { readonly signed: HandOverSigned }) => {
  const t = useText();
  return (
    <>
      <Answered title={t("carry.done")}>
        <p>{t(`carry.done.${signed.report.stage}`)}</p>
      </Answered>
      <SignedReport report={signed.report} />
      {signed.compared !== null && <Compared compared={signed.compared} />}
    </>
  );
};

const Gone = () => {
  const t = useText();
  return (
    <Page title={t("carry.gone")} narrow>
      <p>{t("carry.gone.what")}</p>
    </Page>
  );
};

/** The carrier's page: the link is all that is needed. */
export const Carry = () => {
  const t = useText();
  const name = useCarName();
  const { token } = route.useParams();
  const [signed, setSigned] = useState<HandOverSigned>();
  const { data: carried, error } = useQuery({ ...carriedQuery(token), enabled: signed === undefined });
  const { data: index } = useQuery(transportSheetQuery);
  if (error && signed === undefined) return <Gone />;
  if (!carried || !index) return <Loading />;
  const { stage, carrier, dealer } = carried;
  return (
    <Page
      title={t("carry.title", { stage, car: name(carried.vehicle) })}
      over={t("carry.over", { carrier, dealer: dealer.name })}
      narrow
    >
      <Notice kind="note" title={t("carry.note")}>
        <p>{t("carry.note.what")}</p>
      </Notice>
      {signed === undefined ? (
        <Sheet {...{ token, carried, index }} onSigned={setSigned} />
      ) : (
        <Done signed={signed} />
      )}
    </Page>
  );
};
