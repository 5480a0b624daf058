import { Button } from "@mantine/core";
import type { CarriedHandOver, HandOverSigned } from "@evenhand/shared/http/hand-overs";
import { useMutation, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useState } from "react";
import { useCarName } from "../../entities/car/CarName";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { ownZone } from "../../entities/time/zone-time";
import { unsendable } from "../../features/hand-overs/carried-sheet";
import { findingsOf } from "../../features/hand-overs/findings";
import { KeptNotice, Unsendable } from "../../features/hand-overs/KeptNotice";
import { carriedQuery, transportSheetQuery } from "../../features/hand-overs/queries";
import { PlacePictures, TakePicture } from "../../features/hand-overs/PlacePictures";
import { Compared, SignedReport } from "../../features/hand-overs/Reports";
import { SignReport } from "../../features/hand-overs/SignReport";
import { placesOf, TransportSheet } from "../../features/hand-overs/TransportSheet";
import { useCarriedPictures } from "../../features/hand-overs/use-carried-pictures";
import { useSaid } from "../../features/hand-overs/use-said";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { TextField } from "../../ui/Fields";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const route = getRouteApi("/carry/$token");

interface Props {
  readonly token: string;
  readonly carried: CarriedHandOver;
  readonly index: SheetIndex;
  readonly onSigned: (signed: HandOverSigned) => void;
}

const useReport = ({ token, carried, index, onSigned }: Props) => {
  const { sheet, enter, clear, kept, found } = useSaid(carried);
  const pictures = useCarriedPictures(token, carried);
  const look = useMutation({
    mutationFn: async () => {
      const report = {
        stage: carried.stage,
        started: sheet.started,
        ended: new Date().toISOString(),
        zone: ownZone(),
        place: sheet.place.trim(),
        findings: findingsOf(sheet, index.items),
      };
      return { report, preview: await call("carriedHandOvers.preview", { params: { token }, body: report }) };
    },
  });
  const signed = (answer: HandOverSigned): void => {
    clear();
    onSigned(answer);
  };
  return { sheet, enter, kept, found, pictures, look, signed };
};

type Written = ReturnType<typeof useReport>;

/** The car as a whole, before its places: what nobody thought of shows there. */
const AroundTheCar = ({ pictures }: Pick<Written, "pictures">) => {
  const t = useText();
  const whole = { item: "", position: "" };
  return (
    <Panel title={t("carry.around")} hint={t(`carry.around.${pictures.stage}`)}>
      <div>
        <TakePicture of={pictures} at={whole} named={t("hand-over.picture.whole")} />
      </div>
      <PlacePictures of={pictures} at={whole} named={t("hand-over.picture.whole")} />
    </Panel>
  );
};

const ToFill = ({ carried, index, sheet, enter, kept, found, pictures, look }: Props & Written) => {
  const t = useText();
  const places = placesOf(index, carried.vehicle.form);
  const left = unsendable(sheet);
  const unsent = pictures.waiting.length;
  const ready = sheet.place.trim() !== "" && left.length === 0 && unsent === 0;
  return (
    <>
      <KeptNotice kept={kept} found={found} />
      <TextField
        required
        label={t("carry.place")}
        value={sheet.place}
        onChange={(place) => enter({ act: "place", place })}
      />
      <AroundTheCar pictures={pictures} />
      <TransportSheet index={index} places={places} sheet={sheet} pictures={pictures} onFill={enter} />
      {look.error !== null && <ProblemNotice error={look.error} />}
      <p>{t("carry.answered", { answered: Object.keys(sheet.said).length, places: places.length })}</p>
      <Unsendable keys={left} index={index} />
      {unsent > 0 && <output>{t("carry.photograph.unsent", { count: unsent })}</output>}
      <Button size="lg" loading={look.isPending} disabled={!ready} onClick={() => look.mutate()}>
        {t("carry.look")}
      </Button>
    </>
  );
};

/** The sheet, and then what is about to be signed. */
const Sheet = (props: Props) => {
  const t = useText();
  const written = useReport(props);
  const { look, pictures, signed } = written;
  if (look.data === undefined) return <ToFill {...props} {...written} />;
  return (
    <>
      <div>
        <Button variant="default" onClick={() => look.reset()}>
          {t("carry.again")}
        </Button>
      </div>
      <SignReport
        token={props.token}
        stage={props.carried.stage}
        {...look.data}
        source={pictures}
        onSigned={signed}
      />
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
