// Unpacks the browser into the system's folder for temporary files, which whoever starts this chooses.
import chromium from "@sparticuz/chromium";

await chromium.executablePath();
