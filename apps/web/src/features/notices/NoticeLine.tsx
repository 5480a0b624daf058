import type { Notice } from "@evenhand/shared/http/notices";
import { Link } from "@tanstack/react-router";
import { useTimes } from "../../entities/time/use-times";
import { ownZone } from "../../entities/time/zone-time";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Tag } from "../../ui/Page";
import { placeOf } from "./places";
import { useSentence } from "./use-sentence";

interface Props {
  readonly notice: Notice;
  /** Pressed while it was unread. */
  readonly onRead: () => void;
}

/** What happened and when; pressed, it leads to the place and is read. */
export const NoticeLine = ({ notice, onRead }: Props) => {
  const t = useText();
  const sentence = useSentence();
  const times = useTimes();
  const isUnread = notice.readAt === null;
  return (
    <Line
      main={
        <Link {...placeOf(notice)} onClick={isUnread ? onRead : undefined}>
          {sentence(notice)}
        </Link>
      }
      sub={<time dateTime={notice.createdAt}>{times.full(notice.createdAt, ownZone())}</time>}
      end={isUnread ? <Tag strong>{t("notices.unread")}</Tag> : undefined}
    />
  );
};
