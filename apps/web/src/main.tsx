import "@fontsource-variable/inter/wght.css";
import "./ui/mantine.css";
import "./ui/tokens.css";
import { createRoot } from "react-dom/client";
import { App } from "./shell/App";

const root = document.getElementById("root");
if (!root) throw new Error("the page has no place to show the application in");
createRoot(root).render(<App />);
