import { createTheme, type CSSVariablesResolver, type MantineColorsTuple } from "@mantine/core";

const petrol: MantineColorsTuple = [
  "#eef4f8",
  "#dce7ef",
  "#b6cddd",
  "#8db2cb",
  "#6b9bbb",
  "#548cb1",
  "#3c7499",
  "#285f83",
  "#17496b",
  "#0c3552",
];

/** Mantine's own dark greys, moved to the hue of the ink. */
const dark: MantineColorsTuple = [
  "#e9eef2",
  "#bcc7d0",
  "#94a1ac",
  "#71808d",
  "#4a5864",
  "#35424d",
  "#222d36",
  "#171f26",
  "#12191f",
  "#0f151a",
];

export const theme = createTheme({
  fontFamily: "'Inter Variable', system-ui, sans-serif",
  fontFamilyMonospace: "ui-monospace, 'DejaVu Sans Mono', monospace",
  primaryColor: "petrol",
  primaryShade: { light: 8, dark: 6 },
  autoContrast: true,
  colors: { petrol, dark },
  defaultRadius: "md",
  cursorType: "pointer",
  respectReducedMotion: true,
});

/** Mantine's own colors follow the tokens, so that there is one set of them. */
export const cssVariables: CSSVariablesResolver = () => ({
  variables: {
    "--mantine-color-body": "var(--paper)",
    "--mantine-color-text": "var(--ink)",
    "--mantine-color-dimmed": "var(--ink-3)",
    "--mantine-color-placeholder": "var(--ink-3)",
    "--mantine-color-default": "var(--sheet)",
    "--mantine-color-default-hover": "var(--sheet-2)",
    "--mantine-color-default-color": "var(--ink)",
    "--mantine-color-default-border": "var(--field)",
    "--mantine-color-anchor": "var(--accent)",
    "--mantine-color-error": "var(--caution-rule)",
  },
  light: {},
  dark: {},
});
