import type { QueryClient } from "@tanstack/react-query";
import {
  createRootRouteWithContext,
  createRoute,
  createRouter,
  lazyRouteComponent,
  redirect,
} from "@tanstack/react-router";
import { mayEver } from "../entities/account/may-ever";
import { accountQuery, isKind } from "../entities/account/queries";
import { partCasesQuery } from "../entities/case/queries";
import { hoursSearch } from "../features/booking/search";
import { isDate } from "../entities/time/is-date";
import { answerCostQuery, answerQuery, comparisonQuery } from "../entities/comparison/queries";
import { releasesQuery } from "../entities/release/queries";
import { summariesOfQuery } from "../features/decisions/queries";
import { comparisonSearch } from "../features/comparisons/search";
import { sealedSearch } from "../features/reports/sealed-search";
import { sheetSearch } from "../features/reports/sheet-search";
import { takePageFor } from "../offline/owner";
import { ownPath, text, type RawSearch } from "../service/search";
import { mailedPages } from "@evenhand/shared/mailed-pages";
import { Failed, Missing } from "../ui/Failed";
import { Shell } from "./Shell";

interface Context {
  readonly queries: QueryClient;
}

const root = createRootRouteWithContext<Context>()({ component: Shell });

/** Another account's page: nothing of the last one's stays in its memory. The page is gone before this ends. */
const loadAnew = async (href: string): Promise<never> => {
  globalThis.location.assign(href);
  return new Promise<never>(() => {});
};

const toHome = (): never => {
  throw redirect({ to: "/", replace: true });
};

/** Everything below it asks who is signed in first. */
const signedIn = createRoute({
  getParentRoute: () => root,
  id: "signed-in",
  beforeLoad: async ({ context, location }) => {
    const account = await context.queries.ensureQueryData(accountQuery);
    if (account === null) throw redirect({ to: "/sign-in", search: { next: location.href } });
    if (!takePageFor(account.id)) await loadAnew(location.href);
  },
});

const signIn = createRoute({
  getParentRoute: () => root,
  path: "/sign-in",
  validateSearch: (raw: RawSearch): { next?: string } => ({ next: ownPath(raw["next"]) }),
  component: lazyRouteComponent(() => import("../pages/accounts/SignIn"), "SignIn"),
});

const invitation = createRoute({
  getParentRoute: () => root,
  path: mailedPages.invitation,
  component: lazyRouteComponent(() => import("../pages/accounts/Invitation"), "Invitation"),
});

const forgottenPassword = createRoute({
  getParentRoute: () => root,
  path: "/forgotten-password",
  component: lazyRouteComponent(() => import("../pages/accounts/ForgottenPassword"), "ForgottenPassword"),
});

const newPassword = createRoute({
  getParentRoute: () => root,
  path: mailedPages.newPassword,
  component: lazyRouteComponent(() => import("../pages/accounts/NewPassword"), "NewPassword"),
});

const accountPage = createRoute({
  getParentRoute: () => signedIn,
  path: "/account",
  component: lazyRouteComponent(() => import("../pages/accounts/AccountPage"), "AccountPage"),
});

const home = createRoute({
  getParentRoute: () => signedIn,
  path: "/",
  component: lazyRouteComponent(() => import("../pages/cases/Home"), "Home"),
});

const onlyCase = createRoute({
  getParentRoute: () => signedIn,
  path: "/cases/$case",
  component: lazyRouteComponent(() => import("../pages/cases/CasePage"), "CasePage"),
});

const landedCost = createRoute({
  getParentRoute: () => signedIn,
  path: "/cases/$case/landed-cost",
  component: lazyRouteComponent(() => import("../pages/money/LandedCostPage"), "LandedCostPage"),
});

const beforeMoney = createRoute({
  getParentRoute: () => signedIn,
  path: "/cases/$case/before-money",
  component: lazyRouteComponent(() => import("../pages/money/BeforeMoneyPage"), "BeforeMoneyPage"),
});

/** The list of cases is the first screen. */
const cases = createRoute({
  getParentRoute: () => signedIn,
  path: "/cases",
  beforeLoad: toHome,
});

const queues = createRoute({
  getParentRoute: () => signedIn,
  path: "/queues",
  component: lazyRouteComponent(() => import("../pages/cases/Queues"), "Queues"),
});

const help = createRoute({
  getParentRoute: () => signedIn,
  path: "/help",
  component: lazyRouteComponent(() => import("../pages/cases/Help"), "Help"),
});

const cars = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars",
  validateSearch: (raw: RawSearch): { q?: string } => ({ q: text(raw["q"]) }),
  component: lazyRouteComponent(() => import("../pages/vehicles/Cars"), "Cars"),
});

const newCar = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/new",
  component: lazyRouteComponent(() => import("../pages/vehicles/NewCar"), "NewCar"),
});

const car = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle",
  component: lazyRouteComponent(() => import("../pages/vehicles/Car"), "Car"),
});

const version = createRoute({
  getParentRoute: () => signedIn,
  path: "/report-versions/$version",
  validateSearch: sealedSearch,
  component: lazyRouteComponent(() => import("../pages/reports/SealedReport"), "SealedReport"),
});

const pictureSearch = (raw: RawSearch): { picture?: string } => ({ picture: text(raw["picture"]) });

const reportPictures = createRoute({
  getParentRoute: () => signedIn,
  path: "/report-versions/$version/pictures",
  validateSearch: pictureSearch,
  component: lazyRouteComponent(() => import("../pages/evidence/ReportPictures"), "ReportPictures"),
});

const draftPictures = createRoute({
  getParentRoute: () => signedIn,
  path: "/reports/$report/pictures",
  validateSearch: pictureSearch,
  component: lazyRouteComponent(() => import("../pages/evidence/DraftPictures"), "DraftPictures"),
});

const carPictures = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle/pictures",
  validateSearch: pictureSearch,
  component: lazyRouteComponent(() => import("../pages/evidence/CarPicturesPage"), "CarPicturesPage"),
});

const casePictures = createRoute({
  getParentRoute: () => signedIn,
  path: "/cases/$case/pictures",
  validateSearch: pictureSearch,
  component: lazyRouteComponent(() => import("../pages/evidence/CasePicturesPage"), "CasePicturesPage"),
});

const draft = createRoute({
  getParentRoute: () => signedIn,
  path: "/reports/$report",
  validateSearch: sheetSearch,
  component: lazyRouteComponent(() => import("../pages/reports/SheetForm"), "SheetForm"),
});

const reading = createRoute({
  getParentRoute: () => signedIn,
  path: "/reports/$report/reading",
  component: lazyRouteComponent(() => import("../pages/readings/ReadingPage"), "ReadingPage"),
});

/** What was a list of orders is cases now; its address still leads to them. */
const orders = createRoute({
  getParentRoute: () => signedIn,
  path: "/orders",
  beforeLoad: toHome,
});

const order = createRoute({
  getParentRoute: () => signedIn,
  path: "/orders/$order",
  component: lazyRouteComponent(() => import("../pages/vehicles/Order"), "Order"),
});

const comparison = createRoute({
  getParentRoute: () => signedIn,
  path: "/comparisons/$comparison",
  // Asked for while the page's own code is on its way.
  loader: ({ context: { queries }, params: { comparison: id } }) => {
    const account = queries.getQueryData(accountQuery.queryKey) ?? null;
    void queries.prefetchQuery(comparisonQuery(id));
    void queries.prefetchQuery(answerQuery(id));
    if (mayEver(account, "cases.ofPart")) void queries.prefetchQuery(partCasesQuery(id));
    if (!isKind(account, "buyer")) return;
    void queries.prefetchQuery(answerCostQuery(id));
    void queries.prefetchQuery(summariesOfQuery(id));
    void queries.prefetchQuery(releasesQuery({ comparison: id }));
  },
  validateSearch: comparisonSearch,
  component: lazyRouteComponent(() => import("../pages/comparisons/ComparisonPage"), "ComparisonPage"),
});

const released = createRoute({
  getParentRoute: () => signedIn,
  path: "/released",
  validateSearch: (raw: RawSearch): { vehicle?: string } => ({ vehicle: text(raw["vehicle"]) }),
  component: lazyRouteComponent(() => import("../pages/disputes/Released"), "Released"),
});

const summary = createRoute({
  getParentRoute: () => signedIn,
  path: "/summaries/$summary",
  component: lazyRouteComponent(() => import("../pages/decisions/SummaryPage"), "SummaryPage"),
});

const decisions = createRoute({
  getParentRoute: () => signedIn,
  path: "/decisions",
  component: lazyRouteComponent(() => import("../pages/decisions/Decisions"), "Decisions"),
});

const organization = createRoute({
  getParentRoute: () => signedIn,
  path: "/organization",
  component: lazyRouteComponent(() => import("../pages/accounts/Organization"), "Organization"),
});

const notices = createRoute({
  getParentRoute: () => signedIn,
  path: "/notices",
  component: lazyRouteComponent(() => import("../pages/notices/Notices"), "Notices"),
});

const sessions = createRoute({
  getParentRoute: () => signedIn,
  path: "/sessions",
  component: lazyRouteComponent(() => import("../pages/accounts/Sessions"), "Sessions"),
});

const handbook = createRoute({
  getParentRoute: () => signedIn,
  path: "/handbook",
  component: lazyRouteComponent(() => import("../pages/handbook/Handbook"), "Handbook"),
});

const ownFigures = createRoute({
  getParentRoute: () => signedIn,
  path: "/handbook/own",
  component: lazyRouteComponent(() => import("../pages/handbook/OwnFigures"), "OwnFigures"),
});

const costTable = createRoute({
  getParentRoute: () => signedIn,
  path: "/costs",
  component: lazyRouteComponent(() => import("../pages/costs/CostTablePage"), "CostTablePage"),
});

const ownInstruments = createRoute({
  getParentRoute: () => signedIn,
  path: "/instruments",
  component: lazyRouteComponent(() => import("../pages/instruments/OwnInstruments"), "OwnInstruments"),
});

/** The carrier's page: the link is all that is needed. */
const carry = createRoute({
  getParentRoute: () => root,
  path: "/carry/$token",
  component: lazyRouteComponent(() => import("../pages/hand-overs/Carry"), "Carry"),
});

const handOver = createRoute({
  getParentRoute: () => signedIn,
  path: "/hand-overs/$handOver",
  component: lazyRouteComponent(() => import("../pages/hand-overs/HandOverPage"), "HandOverPage"),
});

const sharedStatement = createRoute({
  getParentRoute: () => root,
  path: "/shared/$token",
  component: lazyRouteComponent(() => import("../pages/publishing/SharedStatement"), "SharedStatement"),
});

const brief = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle/brief",
  component: lazyRouteComponent(() => import("../pages/booking/BriefPage"), "BriefPage"),
});

const hours = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle/hours",
  validateSearch: hoursSearch,
  component: lazyRouteComponent(() => import("../pages/booking/FindHour"), "FindHour"),
});

const listing = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle/listing",
  component: lazyRouteComponent(() => import("../pages/publishing/Listing"), "Listing"),
});

const ask = createRoute({
  getParentRoute: () => signedIn,
  path: "/cars/$vehicle/ask",
  validateSearch: (raw: RawSearch): { item?: string; position?: string } => ({
    item: text(raw["item"]),
    position: text(raw["position"]),
  }),
  component: lazyRouteComponent(() => import("../pages/questions/AskQuestion"), "AskQuestion"),
});

const questions = createRoute({
  getParentRoute: () => signedIn,
  path: "/questions",
  validateSearch: (raw: RawSearch): { vehicle?: string } => ({ vehicle: text(raw["vehicle"]) }),
  component: lazyRouteComponent(() => import("../pages/questions/Questions"), "Questions"),
});

const question = createRoute({
  getParentRoute: () => signedIn,
  path: "/questions/$question",
  component: lazyRouteComponent(() => import("../pages/questions/QuestionPage"), "QuestionPage"),
});

const appointments = createRoute({
  getParentRoute: () => signedIn,
  path: "/appointments",
  component: lazyRouteComponent(() => import("../pages/booking/Appointments"), "Appointments"),
});

const appointment = createRoute({
  getParentRoute: () => signedIn,
  path: "/appointments/$appointment",
  component: lazyRouteComponent(() => import("../pages/booking/AppointmentPage"), "AppointmentPage"),
});

const day = createRoute({
  getParentRoute: () => signedIn,
  path: "/day",
  validateSearch: (raw: RawSearch): { calendar?: string; date?: string } => ({
    calendar: text(raw["calendar"]),
    date: isDate(raw["date"]) ? raw["date"] : undefined,
  }),
  component: lazyRouteComponent(() => import("../pages/booking/InspectorDay"), "InspectorDay"),
});

const calendars = createRoute({
  getParentRoute: () => signedIn,
  path: "/calendars",
  component: lazyRouteComponent(() => import("../pages/calendars/Calendars"), "Calendars"),
});

const newCalendar = createRoute({
  getParentRoute: () => signedIn,
  path: "/calendars/new",
  component: lazyRouteComponent(() => import("../pages/calendars/NewCalendar"), "NewCalendar"),
});

const calendar = createRoute({
  getParentRoute: () => signedIn,
  path: "/calendars/$calendar",
  component: lazyRouteComponent(() => import("../pages/calendars/CalendarPage"), "CalendarPage"),
});

const sites = createRoute({
  getParentRoute: () => signedIn,
  path: "/sites",
  component: lazyRouteComponent(() => import("../pages/calendars/Sites"), "Sites"),
});

const newSite = createRoute({
  getParentRoute: () => signedIn,
  path: "/sites/new",
  component: lazyRouteComponent(() => import("../pages/calendars/NewSite"), "NewSite"),
});

const site = createRoute({
  getParentRoute: () => signedIn,
  path: "/sites/$site",
  component: lazyRouteComponent(() => import("../pages/calendars/SitePage"), "SitePage"),
});

const complaints = createRoute({
  getParentRoute: () => signedIn,
  path: "/complaints",
  component: lazyRouteComponent(() => import("../pages/complaints/Complaints"), "Complaints"),
});

const complaint = createRoute({
  getParentRoute: () => signedIn,
  path: "/complaints/$complaint",
  component: lazyRouteComponent(() => import("../pages/complaints/ComplaintPage"), "ComplaintPage"),
});

const admissions = createRoute({
  getParentRoute: () => signedIn,
  path: "/admissions",
  component: lazyRouteComponent(() => import("../pages/admissions/Admissions"), "Admissions"),
});

const tree = root.addChildren([
  signIn,
  invitation,
  forgottenPassword,
  newPassword,
  sharedStatement,
  carry,
  signedIn.addChildren([
    home,
    cases,
    onlyCase,
    handOver,
    landedCost,
    beforeMoney,
    queues,
    help,
    cars,
    newCar,
    car,
    version,
    reportPictures,
    carPictures,
    casePictures,
    draft,
    draftPictures,
    reading,
    orders,
    order,
    comparison,
    released,
    summary,
    decisions,
    organization,
    accountPage,
    notices,
    sessions,
    handbook,
    ownFigures,
    costTable,
    ownInstruments,
    brief,
    hours,
    listing,
    ask,
    questions,
    question,
    appointments,
    appointment,
    day,
    calendars,
    newCalendar,
    calendar,
    sites,
    newSite,
    site,
    complaints,
    complaint,
    admissions,
  ]),
]);

export const makeRouter = (queries: QueryClient) =>
  createRouter({
    routeTree: tree,
    context: { queries },
    defaultErrorComponent: Failed,
    defaultNotFoundComponent: Missing,
    defaultPreload: "intent",
    scrollRestoration: true,
  });

declare module "@tanstack/react-router" {
  interface Register {
    router: ReturnType<typeof makeRouter>;
  }
}
