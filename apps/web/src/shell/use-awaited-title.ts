import { useRouter } from "@tanstack/react-router";
import { useCallback, useEffect, useRef } from "react";

/** After a person left a page another one's title is awaited, until it is taken. */
export const useAwaitedTitle = (): ((path: string | undefined) => boolean) => {
  const router = useRouter();
  const left = useRef<string | undefined>(undefined);
  useEffect(
    () =>
      router.subscribe("onBeforeNavigate", ({ fromLocation, pathChanged }) => {
        if (fromLocation !== undefined && pathChanged) left.current = fromLocation.pathname;
      }),
    [router],
  );
  return useCallback((path: string | undefined): boolean => {
    if (left.current === undefined || path === undefined || path === left.current) return false;
    left.current = undefined;
    return true;
  }, []);
};
