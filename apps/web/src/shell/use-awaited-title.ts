import { useRouter } from "@tanstack/react-router";
import { useCallback, useEffect, useRef } from "react";

/** After a person went to another page its title is awaited, until it is taken. */
export const useAwaitedTitle = (): (() => boolean) => {
  const router = useRouter();
  const awaited = useRef(false);
  useEffect(
    () =>
      router.subscribe("onBeforeNavigate", ({ fromLocation, pathChanged }) => {
        if (fromLocation !== undefined && pathChanged) awaited.current = true;
      }),
    [router],
  );
  return useCallback((): boolean => {
    const was = awaited.current;
    awaited.current = false;
    return was;
  }, []);
};
