import { lazy, Suspense, type ComponentProps } from "react";

const Viewer = lazy(async () => ({ default: (await import("./Viewer")).Viewer }));

/** The viewer; its code comes when a picture is opened. */
export const LazyViewer = (props: ComponentProps<typeof Viewer>) => (
  <Suspense>
    <Viewer {...props} />
  </Suspense>
);
