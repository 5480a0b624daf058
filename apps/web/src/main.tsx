import "@fontsource-variable/inter/wght.css";
import "./ui/mantine.css";
import "./ui/tokens.css";
import "./ui/first-sight.css";
import { createRoot } from "react-dom/client";
import { App } from "./shell/App";

/* The letters come while the first page is put together, not once it stands: then all of it would be laid out twice. */
void document.fonts.load("1em 'Inter Variable'");
const root = document.getElementById("root");
if (!root) throw new Error("the page has no place to show the application in");
createRoot(root).render(<App />);
