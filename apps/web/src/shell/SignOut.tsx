import { useText } from "../strings/text";
import { LeaveAsk } from "../ui/LeaveAsk";
import menu from "./AccountMenu.module.css";
import { useSignOut } from "./use-sign-out";

/** The way out at the end of the menu, and the question where something would be left. */
export const SignOut = ({ account, onAsk }: { readonly account: string; readonly onAsk: () => void }) => {
  const t = useText();
  const { asking, busy, begin, leave, stay } = useSignOut(account, onAsk);
  return (
    <>
      <button type="button" className={menu.leave} disabled={busy} onClick={() => void begin()}>
        {t(busy ? "sign-out.sending" : "nav.sign-out")}
      </button>
      {asking !== null && (
        <LeaveAsk
          left={asking.left}
          error={asking.error}
          onStay={stay}
          onLeave={(what) =>
            void leave(asking.left, what === "throw-away" || asking.left === 0 ? "forget" : "keep")
          }
        />
      )}
    </>
  );
};
