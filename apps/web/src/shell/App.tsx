import { MantineProvider } from "@mantine/core";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { RouterProvider } from "@tanstack/react-router";
import { StrictMode } from "react";
import { IntlProvider } from "react-intl";
import { makeRouter } from "./router";
import { Refusal } from "../service/refusal";
import { en } from "../strings/en";
import { cssVariables, theme } from "../ui/theme";

/** What the service refused will be refused again; only a lost connection is worth another try. */
const worthRetrying = (count: number, error: Error): boolean =>
  count < 2 && error instanceof Refusal && error.problem.status === 0;

const queries = new QueryClient({
  defaultOptions: { queries: { retry: worthRetrying, staleTime: 15_000, refetchOnWindowFocus: true } },
});
const router = makeRouter(queries);

export const App = () => (
  <StrictMode>
    <IntlProvider locale="en-US" defaultLocale="en-US" messages={en}>
      <MantineProvider theme={theme} cssVariablesResolver={cssVariables} defaultColorScheme="auto">
        <QueryClientProvider client={queries}>
          <RouterProvider router={router} />
        </QueryClientProvider>
      </MantineProvider>
    </IntlProvider>
  </StrictMode>
);
