import { infiniteQueryOptions } from "@tanstack/react-query";

export interface Page<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

/** A keyset list, read on page by page. */
export const pagedQuery = <T>(
  key: readonly unknown[],
  ask: (after: string | undefined, signal: AbortSignal) => Promise<Page<T>>,
) =>
  infiniteQueryOptions({
    queryKey: key,
    queryFn: ({ pageParam, signal }) => ask(pageParam, signal),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: ({ next }) => next ?? undefined,
    select: ({ pages }) => pages.flatMap(({ items }) => items),
  });
